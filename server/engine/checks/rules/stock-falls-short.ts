import { stated, wordSpan } from '../../plan/gather';
import type { BringItem, Plan } from '../../plan/plan';
import { exactly, type Quantity } from '../../quantity';
import { pound, standardAtmosphere } from '../../reference/table-units';
import type { Shortfall } from '../../takeoff/shortfalls';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { bringing } from '../example-stock';
import { brought, figureOf, unusedRefrigerants } from '../stock';
import { shown } from '../support';
import { bringMore, bringToo, written } from '../ways-out';
import { oilMisfit } from './oil-does-not-suit';

/** The stock that the plan states does not last. */
export const stockFallsShort = defineCheck({
  name: 'stock-falls-short',
  severity: 'warning',
  title: 'The stock does not last',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  // More of it would make the slip of the figure final.
  yieldsTo: ['oil-amount-unlikely', 'charge-does-not-fit', 'charged-twice', 'first-charge-unusual'],
  meaning:
    'The plan states what it brings, and at the most rounds that it allows a material runs out at this step. A nitrogen cylinder gives nothing below the pressure that a step asks of it. Or a charge is trimmed out of less refrigerant than an eighth of it, and than 2 lb.',
  why: 'The crew stops with the circuit open, or makes do with one round less.',
  source: 'the take-off of the plan',
  wrong: {
    base: 'split',
    plan: bringing('nitrogen 1 x n2-80'),
    instead: [
      ['  pressure-test each open part', '  # the small cylinder cannot give it\n  pressure-test each open part'],
      ['to 450 psig for 30 min', 'to 450 psig for 30 min'],
      [
        'purge each kept line at 100 psig for 60 s into container',
        'purge each kept line at 100 psig for 6 min into container # <- here',
      ],
    ],
  },
  right: {
    base: 'split',
    plan: bringing('solvent 2 x shop-flush', 'nitrogen 3 x n2-250', 'refrigerant R-454B 5 lb'),
  },
  plan(whole) {
    for (const { kind, what, entry, missing } of whole.view.takeOff.shortfalls) {
      // Room for what is recovered is a matter of safety and has a check of its own.
      if (kind === 'recovery') continue;
      const items = brought(whole.plan, kind);
      // Another one in its place is a finding of its own, other-refrigerant.
      if (kind === 'refrigerant' && unusedRefrigerants(whole.plan).length > 0) continue;
      const item = items.find((each) => named(each, kind, what)) ?? (kind === 'nitrogen' ? items[0] : undefined);
      if (!item && isMeant(whole.plan, entry, kind, what)) continue;
      whole.report(entry, {
        message: (say) =>
          `${what.charAt(0).toUpperCase()}${what.slice(1)} runs out at ${say.step(entry.cause)}: ${item ? `${shown(whole.plan, missing)} are missing at the most rounds${kind === 'nitrogen' ? ', counting that a cylinder gives nothing below the pressure asked of it' : ''}` : 'none is brought'}; bring more.`,
        root: what,
        concerns: entry.events.flatMap((event) => {
          if (event.type === 'changes-oil') return [event.part];
          return kind === 'refrigerant' && event.type === 'charges' ? event.spaces.flatMap(({ parts }) => parts) : [];
        }),
        fixes: item
          ? more(whole.plan, item, kind, missing, askedFrom(whole.entries, entry))
          : instead(whole.plan, kind, what, missing, items),
        related: item
          ? [
              {
                bound: item.bound,
                span:
                  item.bound.spans['what'] ??
                  item.bound.spans['refrigerant'] ??
                  item.bound.spans['oil'] ??
                  wordSpan(item.bound),
                message: 'what is brought',
              },
            ]
          : [],
      });
    }
    swabs(whole);
    trims(whole);
  },
});

/** Who trims a charge by the glass, the level or the subcooling brings an eighth of it, or two pounds (common practice, no source). */
const trimShare = 1 / 8;
const trimMost = 2 * pound;

/** A charge that is trimmed out of next to nothing: how much goes in, nobody weighs before. */
function trims({ plan, entries, report }: Whole): void {
  const { charge, refrigerant } = plan.system;
  if (!charge) return;
  const asked = Math.min(charge.quantity.low * trimShare, trimMost);
  const entry = entries.find(
    ({ slot, events }) =>
      slot.step.values['per'] === undefined &&
      events.some(
        (event) => event.type === 'charges' && event.purpose === 'adjust' && event.refrigerant === refrigerant.after,
      ),
  );
  const items = brought(plan, 'refrigerant').filter(({ name }) => name === refrigerant.after);
  const [item] = items;
  if (!entry || !item) return;
  const masses = items.map(({ bound }) => stated(bound, 'mass', plan.site.atmosphere));
  const has = masses.reduce((sum, mass) => sum + (mass?.quantity.high ?? Number.NaN), 0);
  if (!(has < asked * 0.999)) return;
  const [first] = masses;
  const text = written(plan, exactly('mass', asked));
  report(entry, {
    message: `The charge of ${shown(plan, charge.quantity)} is trimmed here out of ${shown(plan, exactly('mass', has))}: less than an eighth of it, or ${shown(plan, exactly('mass', trimMost))}, does not last (common practice, no source); read figure and unit again, or bring more.`,
    root: refrigerant.after ?? item.name,
    concerns: [],
    related: [{ bound: item.bound, span: first?.span ?? wordSpan(item.bound), message: 'what is brought' }],
    fixes:
      first && items.length === 1
        ? [{ title: `Bring ${text}`, edits: (mend) => [mend.change(item.bound, first.span, text)] }]
        : [],
  });
}

/** A wrong refrigerant or oil that a step names is told as that; of course none of it is brought. */
function isMeant(plan: Plan, { slot }: Entry, kind: Shortfall['kind'], what: string): boolean {
  if (slot.step.values['per'] !== undefined) return false;
  if (kind === 'oil') return oilMisfit(plan, what.replace(/ oil$/, '')) !== null;
  const comes = plan.graph.parts.some((part) => part.properties.holds?.refrigerant === what);
  return kind === 'refrigerant' && what !== plan.system.refrigerant.after && !comes;
}

/** One swab goes through a line once: those that the steps count, against those on the list. */
function swabs({ plan, entries, report }: Whole): void {
  const item = brought(plan, 'swabs')[0];
  const number = item?.bound.values['number'] as number | undefined;
  if (!item || number === undefined) return;
  let asked = 0;
  let short: Entry | undefined;
  for (const entry of entries) {
    const each = entry.slot.step.values['number'] as number | undefined;
    asked += entry.events.filter((event) => event.type === 'swabs').length * (each ?? 1);
    if (asked > number) short ??= entry;
  }
  const span = item.bound.spans['number'];
  if (short)
    report(short, {
      message: (say) =>
        `Swabs run out at ${say.step(short.cause)}: the steps pull ${asked} through the lines, and ${number} are brought; bring more.`,
      root: 'swabs',
      concerns: [],
      related: [{ bound: item.bound, span: span ?? wordSpan(item.bound), message: 'what is brought' }],
      fixes: span ? [{ title: `Bring ${asked}`, edits: (mend) => [mend.change(item.bound, span, String(asked))] }] : [],
    });
}

const named = (item: BringItem, kind: Shortfall['kind'], what: string): boolean =>
  item.name === what || (kind === 'oil' && `${item.name} oil` === what);

/** As much of it as makes up what is missing: whole containers and cylinders, or a greater amount. */
function more(
  plan: Plan,
  item: BringItem,
  kind: Shortfall['kind'],
  missing: Quantity,
  asked: number,
): readonly WayOut[] {
  if (kind === 'refrigerant' || kind === 'oil') {
    const amount = stated(item.bound, kind === 'oil' ? 'volume' : 'mass', plan.site.atmosphere);
    if (!amount) return [];
    // A twentieth over, so that rounding does not leave it short.
    const text = written(plan, exactly(missing.kind, (amount.quantity.low + missing.high) * 1.05));
    return [{ title: `Bring ${text}`, edits: (mend) => [mend.change(item.bound, amount.span, text)] }];
  }
  const each =
    kind === 'solvent' ? figureOf(plan, item.declaration, 'container', 'mass')?.low : given(plan, item, asked);
  if (!each || each <= 0) return [];
  // A sixth over for what real gas and a cold cylinder keep back.
  const number = item.number + Math.ceil((missing.high / each) * 1.17);
  // Where a van of them would not do, a figure of the steps is wrong, not the list.
  return number > mostBrought ? [] : bringMore(item, number);
}

/** Nobody brings more of one thing than this to a job (common practice, no source). */
const mostBrought = 12;

/** What is on no list: in place of the only other one of its kind, or as a line more. */
function instead(
  plan: Plan,
  kind: Shortfall['kind'],
  what: string,
  missing: Quantity,
  items: readonly BringItem[],
): readonly WayOut[] {
  const name = kind === 'oil' ? what.replace(/ oil$/, '') : what;
  const [only] = items;
  const span = only?.bound.spans[kind];
  if (only && span && items.length === 1)
    return [{ title: `Bring ${name}`, edits: (mend) => [mend.change(only.bound, span, name)] }];
  if (kind !== 'oil' && kind !== 'refrigerant') return [];
  // A twentieth over, so that rounding does not leave it short.
  return bringToo(plan, `${kind} ${name} ${written(plan, exactly(missing.kind, missing.high * 1.05))}`);
}

/** The nitrogen that a full cylinder gives down to a pressure, at the atmosphere, m3. */
function given(plan: Plan, item: BringItem, asked: number): number | undefined {
  const volume = figureOf(plan, item.declaration, 'water-volume', 'volume')?.low;
  const full = figureOf(plan, item.declaration, 'full', 'pressure')?.low;
  return volume && full && !item.bound.spans['at'] ? (volume * (full - asked)) / standardAtmosphere : undefined;
}

/** The highest pressure that is asked of a cylinder from a step on, Pa absolute. */
const askedFrom = (entries: readonly Entry[], from: Entry): number =>
  Math.max(
    ...entries
      .slice(entries.indexOf(from))
      .flatMap((entry) =>
        entry.events.map((event) => (event.type === 'pressurises' || event.type === 'flows' ? (event.level ?? 0) : 0)),
      ),
  );
