import type { Part } from '../../circuit/graph';
import { bubblePressure, dewPressure, refrigerantNamed } from '../../properties';
import { factsOf } from '../../reference/refrigerant-facts';
import { fahrenheit } from '../../reference/table-units';
import type { Event } from '../../steps/events';
import type { Duty } from '../../takeoff/cycle';
import type { Entry } from '../../walk/walk';
import { firstStart, isCharge, leaves, marked, markedAfter, marksLeft } from '../course';
import { defineCheck, type WayOut, type Whole } from '../define';
import { touched } from '../plant';
import { edits } from '../support';
import { dutyWith } from '../vapour-lines';
import { insertAfter, moveBefore } from '../ways-out';

/** What a change of refrigerant in the old machine asks for beside the charge. */
export const conversionNotCarriedThrough = defineCheck({
  name: 'conversion-not-carried-through',
  severity: 'warning',
  title: 'Seals, controls or metering devices are not dealt with in a conversion',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['refrigerant-never-changed'],
  meaning:
    'The refrigerant of a kept machine changes. Seals that swelled in a gas with chlorine shrink in one without; regulators and pressure controls stand at the old pressures; expansion valves give another superheat; a fixed orifice or capillary tube lets through more or less than the compressor pumps. The plan leaves one of them as it is.',
  why: 'Leaks at every valve stem within weeks, a compressor that trips or never stops, liquid back to the compressor.',
  source: 'trade guides on conversions, from memory (handbook 13.3, 9.3)',
  wrong: {
    base: 'rack',
    instead: [
      ['    renew seals, cores\n', ''],
      ['charge system with R-448A 50 lb as liquid', 'charge system with R-448A 50 lb as liquid # <- here'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan, entries } = whole;
    const { before, after } = plan.system.refrigerant;
    if (!plan.kinds.includes('conversion') || !before || !after || before === after) return;
    if (plan.system.smallAppliance !== null) return;
    const parts = plan.graph.parts.filter((part) => touched(plan.graph, part.index) && part.standing === 'kept');
    const charge = entries.find(isCharge);
    const last = entries.at(-1);
    const chlorine = factsOf(before)?.ozoneDepleting === true && factsOf(after)?.ozoneDepleting !== true;
    const [sealed] = parts.filter((part) => part.kind.group === 'valve' || part.kind.kind === 'receiver');
    if (charge && chlorine && !marked(last, /^(renew|change) .*(seal|gasket|ring|core)/))
      whole.report(charge, {
        message: `${after} goes in with the seals of ${before}: those of ${sealed?.name ?? 'the service valves and cores'} and the like shrink when its chlorine is gone; renew them while the circuit is open.`,
        slot: 'what',
        root: 'seals',
        concerns: [],
        fixes: whileOpen(entries),
      });
    controls(whole, after);
    valves(whole, parts, after);
    orifices(whole, parts, before, after);
  },
});

/** The seals are renewed as soon as the circuit stands open. */
const whileOpen = (entries: readonly Entry[]): readonly WayOut[] =>
  entries
    .filter((entry) => entry.events.some((event) => event.type === 'opens'))
    .slice(0, 1)
    .map((entry) => insertAfter('Renew them while the circuit is open', entry.slot.step, 'renew seals, cores'));

/** Thermostatic valves that stay are set anew, or their inside is changed; a superheat that is read once it runs is looked at. */
function valves({ plan, entries, reportPart }: Whole, parts: readonly Part[], after: string): void {
  const last = entries.at(-1);
  if (!last || !entries.some(isCharge) || marked(last, /orifice|element/)) return;
  if (markedAfter(entries, Math.max(firstStart(entries), 0), /superheat/) && !entries.some(setsValve)) return;
  const set = new Set(entries.flatMap(({ events }) => events.flatMap((event) => (setsIn(event) ? event.parts : []))));
  const left = parts.filter(
    ({ kind, index }) =>
      kind.kind === 'expansion-valve' && last.after.parts[index]!.renewed === null && !set.has(index),
  );
  for (const valve of left)
    reportPart(valve.index, {
      message: `${valve.name} was set for ${plan.system.refrigerant.before}: change it, or adjust its superheat with ${after} running.`,
      root: 'valves',
      fixes: afterStart(entries, left.map(({ name }) => name).join(', ')),
    });
}

/** Within this share of what the compressor pumps, the charge alone trims an orifice that stays (common practice, no source). */
const sameOrifice = 0.2;

/** A fixed orifice that stays lets through by the root of density and pressure difference; the compressor pumps by the vapour's density. */
function orifices({ plan, entries, reportPart }: Whole, parts: readonly Part[], before: string, after: string): void {
  const [old, fresh] = [dutyWith(plan, before), dutyWith(plan, after)];
  const last = entries.at(-1);
  if (!old || !fresh || !last || !entries.some(isCharge)) return;
  const passes = ({ liquidDensity, dischargePressure, suctionPressure, suctionDensity }: Duty): number =>
    Math.sqrt(liquidDensity * (dischargePressure - suctionPressure)) / suctionDensity;
  const share = passes(fresh) / passes(old) - 1;
  if (Math.abs(share) <= sameOrifice) return;
  for (const { kind, index, name } of parts)
    if ((kind.kind === 'fixed-orifice' || kind.kind === 'cap-tube') && last.after.parts[index]!.renewed === null)
      reportPart(index, {
        message: `${name} was sized for ${before}: of ${after} it lets through about ${Math.round(Math.abs(share) * 100)} % ${share > 0 ? 'more' : 'less'} than the compressor pumps at the same temperatures; change it by the maker's table.`,
        root: 'orifice',
        concerns: [],
      });
}

type Adjusts = Extract<Event, { readonly type: 'adjusts' }>;
const setsIn = (event: Event): event is Adjusts => event.type === 'adjusts' && event.what === 'superheat';
const setsValve = ({ events }: Entry): boolean => events.some(setsIn);

/** The superheat is adjusted once the machine runs steadily. */
const afterStart = (entries: readonly Entry[], valve: string): readonly WayOut[] => {
  const start = entries[firstStart(entries)];
  return start
    ? [
        insertAfter(
          'Adjust its superheat after the start',
          start.slot.step,
          `adjust superheat of ${valve} after 15 min`,
        ),
      ]
    : [];
};

function controls(whole: Whole, after: string): void {
  const regulator = whole.plan.graph.parts.find(
    (part) => part.kind.kind === 'evaporator-pressure-regulator' && touched(whole.plan.graph, part.index),
  );
  const start = whole.entries[firstStart(whole.entries)];
  const set = whole.entries.find((entry) => leaves(entry, /^reset /));
  if (start && set && whole.entries.indexOf(set) > whole.entries.indexOf(start))
    whole.report(set, {
      message: (say) =>
        `The controls are set for ${after} only after ${say.step(start.cause)} has started the machine: set them before.`,
      slot: 'what',
      root: 'late',
      concerns: [],
      fixes: [moveBefore('Set them before the start', set.slot.step, start.slot.step)],
      related: [{ cause: start.cause, message: 'the machine starts here' }],
    });
  if (!start) return;
  if (set) {
    // The regulator holds another pressure than the switches: setting those leaves it where it was.
    if (regulator && start && !regulatorSet(whole, regulator))
      whole.report(set, {
        message: `${regulator.name} still stands at the pressure of ${whole.plan.system.refrigerant.before} when the system starts: set it for ${after} with the other controls.`,
        slot: 'what',
        root: 'regulator',
        concerns: [regulator.index],
        fixes: [insertAfter(`Set ${regulator.name}, too`, set.slot.step, `reset ${regulator.name} for ${after}`)],
      });
    return;
  }
  if (!regulator && !otherPressures(whole, after)) return;
  const what = regulator ? `${regulator.name} and the pressure controls` : 'The pressure controls';
  whole.report(start, {
    message: `${what} still stand at the pressures of the old refrigerant when the system starts.`,
    slot: 'what',
    root: 'controls',
    concerns: [],
    fixes: [
      {
        title: 'Set the controls first',
        edits: (mend) =>
          edits(
            mend.insertBefore(
              start.slot.step,
              `reset low-pressure-switch, head-pressure-control${regulator ? `, ${regulator.name}` : ''} for ${after}`,
            ),
          ),
      },
    ],
  });
}

/** Whether a regulator is set by its name or with all controls, adjusted, or taken out. */
function regulatorSet({ entries }: Whole, { index, name, kind }: Part): boolean {
  const all = /^(reset|adjust|renew|change) (?:.*\b)?(controls?|regulators?|evaporator-pressure-regulators?)\b/;
  return (
    (entries.at(-1)?.after.parts[index]?.renewed ?? null) !== null ||
    entries.some(
      (entry) =>
        entry.events.some((event) => event.type === 'adjusts' && event.parts.includes(index)) ||
        marksLeft(entry).some(
          (mark) =>
            all.test(mark) ||
            (/^(reset|adjust|read|renew|change) /.test(mark) && (mark.includes(name) || mark.includes(kind.kind))),
        ),
    )
  );
}

/** Beyond this share the pressures of two refrigerants are two settings of one switch (common practice, no source). */
const sameSetting = 0.03;
/** An evaporating temperature that most machines see, K. */
const evaporates = fahrenheit(30);
/** A condensing temperature that most machines see, K. */
const condenses = fahrenheit(110);

/** Whether a switch set for the old refrigerant cuts out at another temperature with the new one. */
function otherPressures(whole: Whole, after: string): boolean {
  const [old, fresh] = [whole.plan.system.refrigerant.before ?? '', after].map((name) => {
    const tables = refrigerantNamed(name);
    return tables ? ([dewPressure(tables, evaporates), bubblePressure(tables, condenses)] as const) : [];
  });
  return [0, 1].some((side) => {
    const [was, is] = [old?.[side], fresh?.[side]];
    return !!was && !!is && Math.abs(is / was - 1) > sameSetting;
  });
}
