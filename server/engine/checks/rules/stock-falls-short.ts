import { stated, wordSpan } from '../../plan/gather';
import type { BringItem, Plan } from '../../plan/plan';
import { exactly, type Quantity } from '../../quantity';
import { standardAtmosphere } from '../../reference/table-units';
import type { Shortfall } from '../../takeoff/shortfalls';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut } from '../define';
import { bringing } from '../example-stock';
import { brought, figureOf, unusedRefrigerants } from '../stock';
import { shown } from '../support';
import { bringMore, written } from '../ways-out';

/** The stock that the plan states does not last. */
export const stockFallsShort = defineCheck({
  name: 'stock-falls-short',
  severity: 'warning',
  title: 'The stock does not last',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The plan states what it brings, and at the most rounds that it allows a material runs out at this step. A nitrogen cylinder gives nothing below the pressure that a step asks of it.',
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
      whole.report(entry, {
        message: (say) =>
          `${what.charAt(0).toUpperCase()}${what.slice(1)} runs out at ${say.step(entry.cause)}: ${item ? `${shown(whole.plan, missing)} are missing at the most rounds${kind === 'nitrogen' ? ', counting that a cylinder gives nothing below the pressure asked of it' : ''}` : 'none is brought'}; bring more.`,
        root: what,
        fixes: item ? more(whole.plan, item, kind, missing, askedFrom(whole.entries, entry)) : [],
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
  },
});

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
