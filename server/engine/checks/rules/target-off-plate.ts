import type { Stated } from '../../plan/plan';
import { subcoolingBand, superheatBand } from '../../reference/charging';
import { defineCheck, type Here } from '../define';
import { judgedBy } from '../plant';
import { edits, shown } from '../support';

/** A step that adjusts to another target than the one that the plan states for the machine. */
export const targetOffPlate = defineCheck({
  name: 'target-off-plate',
  severity: 'warning',
  title: 'Adjusted to another target than the machine’s',
  acceptable: true,
  yieldsTo: ['target-unlikely'],
  reads: 'figure',
  ground: 'published',
  meaning:
    'A step adjusts the charge or a valve to a figure that lies further from the subcooling or superheat of the `system` than the work may end from its target: 3 °F of subcooling, 5 °F of superheat. Silent where the step cites its sheet with `per`.',
  why: 'The crew works to the figure in the step, not to the plate: the machine ends overcharged, or liquid comes back to the compressor.',
  source: `${subcoolingBand.source}; ${superheatBand.source} (handbook 9.2)`,
  wrong: {
    base: 'split',
    instead: [['adjust charge after 15 min', 'adjust charge to 25 Δ°F after 15 min # <- here']],
  },
  right: {
    base: 'split',
    instead: [['adjust charge after 15 min', 'adjust charge to 10 Δ°F after 15 min']],
  },
  step(here) {
    if (here.per !== null) return;
    for (const event of here.events('adjusts')) {
      if (event.to === null || typeof event.to === 'string') continue;
      const what = judgedBy(here.plan, event.what);
      const stated = here.plan.system[what];
      const band = what === 'superheat' ? superheatBand : subcoolingBand;
      if (!stated) continue;
      const { low, high } = stated.quantity;
      const reach = band.quantity.high * 1.001;
      if (event.to.high >= low - reach && event.to.low <= high + reach) continue;
      report(here, what, stated, shown(here.plan, event.to), shown(here.plan, band.quantity), band.source);
    }
  },
});

function report(here: Here, what: string, stated: Stated, to: string, band: string, source: string): void {
  const asked = shown(here.plan, stated.quantity);
  const literal = stated.amount.literal;
  const target = literal && literal.high === literal.low ? literal.text : null;
  here.report({
    message: `This adjusts to a ${what} of ${to}, and the system states ${asked}${stated.per ? ` (${stated.per})` : ''}, from which the work may end ${band} away (${source}); one of the two is wrong.`,
    slot: 'to',
    related: [{ bound: stated.bound, span: stated.span, message: `the ${what} of the system` }],
    fixes: target
      ? [
          {
            title: `Adjust to ${target}`,
            edits: (mend) => edits(mend.replace(here.step, 'to', `to ${target}`)),
          },
        ]
      : [],
  });
}
