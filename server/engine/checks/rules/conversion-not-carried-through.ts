import { bubblePressure, dewPressure, refrigerantNamed } from '../../properties';
import { factsOf } from '../../reference/refrigerant-facts';
import { fahrenheit } from '../../reference/table-units';
import type { Entry } from '../../walk/walk';
import { firstStart, isCharge, marked } from '../course';
import { defineCheck, type WayOut, type Whole } from '../define';
import { touched } from '../plant';
import { edits } from '../support';
import { insertAfter, moveBefore } from '../ways-out';

/** What a change of refrigerant in the old machine asks for beside the charge. */
export const conversionNotCarriedThrough = defineCheck({
  name: 'conversion-not-carried-through',
  severity: 'warning',
  title: 'Seals, controls or metering devices are not dealt with in a conversion',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The refrigerant of a kept machine changes. Seals that swelled in a gas with chlorine shrink in one without; regulators and pressure controls stand at the old pressures; expansion valves give another superheat. The plan leaves one of them as it is.',
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
        fixes: whileOpen(entries),
      });
    controls(whole, after);
    const valve = parts.find(
      (part) => part.kind.kind === 'expansion-valve' && last?.after.parts[part.index]?.renewed === null,
    );
    const set = entries.some((entry) =>
      entry.events.some((event) => event.type === 'adjusts' && event.what === 'superheat'),
    );
    if (valve && last && charge && !set && !marked(last, /superheat|orifice|element/))
      whole.reportPart(valve.index, {
        message: `${valve.name} was set for ${before}: change it, or adjust its superheat with ${after} running.`,
        root: 'valves',
        fixes: afterStart(entries, valve.name),
      });
  },
});

/** The seals are renewed as soon as the circuit stands open. */
const whileOpen = (entries: readonly Entry[]): readonly WayOut[] =>
  entries
    .filter((entry) => entry.events.some((event) => event.type === 'opens'))
    .slice(0, 1)
    .map((entry) => insertAfter('Renew them while the circuit is open', entry.slot.step, 'renew seals, cores'));

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
  const set = whole.entries.find((entry) =>
    [...entry.after.marks].some(([mark, cause]) => cause === entry.cause && mark.startsWith('reset ')),
  );
  if (start && set && whole.entries.indexOf(set) > whole.entries.indexOf(start))
    whole.report(set, {
      message: (say) =>
        `The controls are set for ${after} only after ${say.step(start.cause)} has started the machine: set them before.`,
      slot: 'what',
      root: 'late',
      fixes: [moveBefore('Set them before the start', set.slot.step, start.slot.step)],
      related: [{ cause: start.cause, message: 'the machine starts here' }],
    });
  if (!start || marked(whole.entries.at(-1), /^reset /)) return;
  if (!regulator && !otherPressures(whole, after)) return;
  const what = regulator ? `${regulator.name} and the pressure controls` : 'The pressure controls';
  whole.report(start, {
    message: `${what} still stand at the pressures of the old refrigerant when the system starts.`,
    slot: 'what',
    root: 'controls',
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
