import { wordSpan } from '../../plan/gather';
import type { BringItem } from '../../plan/plan';
import type { Shortfall } from '../../takeoff/shortfalls';
import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { brought } from '../stock';
import { shown } from '../support';

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
        'purge each kept line at 100 psig for 60 min into container # <- here',
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
      const item = items.find((each) => named(each, kind, what)) ?? (kind === 'nitrogen' ? items[0] : undefined);
      whole.report(entry, {
        message: (say) =>
          `${what.charAt(0).toUpperCase()}${what.slice(1)} runs out at ${say.step(entry.cause)}: ${item ? `${shown(whole.plan, missing)} are missing at the most rounds${kind === 'nitrogen' ? ', counting that a cylinder gives nothing below the pressure asked of it' : ''}` : 'none is brought'}; bring more.`,
        root: what,
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
