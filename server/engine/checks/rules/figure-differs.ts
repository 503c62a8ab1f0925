import { children } from '../../plan/bind';
import { stated, wordSpan } from '../../plan/gather';
import type { Name } from '../../plan/term';
import type { Figure } from '../../takeoff/figure';
import { defineCheck } from '../define';
import { shown } from '../support';

/** Under what a figure may be expected, beside its own name; the one for the whole step comes first. */
const meant: Readonly<Record<string, readonly string[]>> = {
  solvent: ['solvent-of-step', 'solvent-per-pass'],
  nitrogen: ['nitrogen-in-all', 'purge-nitrogen', 'fill-nitrogen', 'brazing-nitrogen'],
  time: ['flush-time', 'pump-down-time'],
  charge: ['first-charge', 'total-charge'],
  allowance: ['line-allowance'],
  fill: ['safe-fill'],
  level: ['recovery-level', 'recovery-level-by-law'],
  energy: ['stored-energy'],
};
/** Where the author states no tolerance (common practice, no source). */
const usualTolerance = 0.1;

/** A figure of the author against the computed one. */
export const figureDiffers = defineCheck({
  name: 'figure-differs',
  severity: 'warning',
  title: 'A stated figure differs from the computed one',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'A step expects an amount, and what the plan itself gives is further away from it than the stated tolerance (10 % where none is stated).',
  why: 'One of the two is wrong: a diameter, a length, a number of rounds, or the figure that was carried over from another job.',
  source: 'the take-off of the plan; its workings stand with the figure',
  wrong: {
    base: 'split',
    instead: [
      [
        'flush each kept line into container',
        'flush each kept line into container {\n      expect solvent 90 fl-oz, within 10 % # <- here\n    }',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const seen = new Set<unknown>();
    whole.entries.forEach((entry, at) => {
      const { step } = entry.slot;
      if (seen.has(step)) return;
      seen.add(step);
      for (const bound of children(step.bound.block, 'expect')) {
        const what = bound.values['what'] as Name | undefined;
        const said = stated(bound, 'amount', whole.plan.site.atmosphere);
        if (!what || !said) continue;
        const figure = figureFor(whole.view.takeOff.steps[at] ?? [], what.text, said.quantity.kind);
        if (!figure) {
          whole.reportAt(
            bound,
            { from: what.from, to: what.to },
            {
              severity: 'information',
              message: `Nothing of this step computes "${what.text}" in that unit, so the figure is printed as it stands.`,
            },
            step.file,
          );
          continue;
        }
        if (!figure.quantity) continue;
        const tolerance = stated(bound, 'within', whole.plan.site.atmosphere)?.quantity.high ?? usualTolerance;
        const { low, high } = figure.quantity;
        if (said.quantity.low <= high * (1 + tolerance) && said.quantity.high >= low * (1 - tolerance)) continue;
        const computed = shown(whole.plan, figure.quantity);
        whole.reportAt(
          bound,
          bound.spans['amount'] ?? wordSpan(bound),
          {
            message: `The step expects ${said.amount.literal.text} of ${what.text}, and the plan gives ${computed} (${figure.name.replaceAll('-', ' ')}${/step/.test(figure.subject) ? '' : ` of ${figure.subject}`}): mend the figure or what it rests on.`,
            fixes: [
              {
                title: `Write ${computed}`,
                edits: () => [
                  {
                    at: { file: step.file, item: bound.item, from: said.span.from, to: said.span.to },
                    text: shown(whole.plan, figure.quantity!, { grouped: false }),
                  },
                ],
              },
            ],
          },
          step.file,
        );
      }
    });
  },
});

function figureFor(figures: readonly Figure[], what: string, kind: string): Figure | undefined {
  for (const name of [what, ...(meant[what] ?? [])]) {
    const found = figures.find((figure) => figure.name === name && figure.kind === kind);
    if (found) return found;
  }
  return undefined;
}
