import { wordSpan } from '../../plan/gather';
import { eachStep, type Step } from '../../plan/step';
import { defineCheck } from '../define';

/** Two steps of one label. It reads labels: they are all that departures and records have to point with. */
export const duplicateLabel = defineCheck({
  name: 'duplicate-label',
  severity: 'error',
  title: 'Two steps bear one label',
  acceptable: false,
  reads: 'words',
  ground: 'practice',
  meaning:
    'A label stands before more than one step of the plan as it will be done, or a departure names a label that more than one step of the standard bears.',
  why: 'A departure, a failed test or a record that names it could mean either step.',
  source: 'how plans are read',
  wrong: {
    base: 'split',
    instead: [
      ['  recover system', '  first: recover system'],
      ['  prove-zero system', '  first: prove-zero system # <- here'],
    ],
  },
  right: { base: 'split', instead: [['  recover system', '  first: recover system']] },
  plan(whole) {
    const seen = new Map<string, Step>();
    for (const step of eachStep(whole.plan.steps)) {
      if (!step.label) continue;
      const first = seen.get(step.label);
      if (!first) {
        seen.set(step.label, step);
        continue;
      }
      const { label } = step.bound;
      whole.reportAt(
        step.bound,
        label ?? { from: 0, to: 1 },
        {
          message: `"${step.label}" is the label of an earlier step too (${first.text}): a record or a step that goes back to it cannot tell them apart, so give this one its own.`,
          fixes: label
            ? [
                {
                  title: 'Give it a label of its own',
                  edits: (mend) => mend.write(step, label.from, label.to, freeLabel(whole.plan.steps, step.label!)),
                },
              ]
            : [],
          related: [
            {
              bound: first.bound,
              file: first.file,
              ...(first.bound.label && { span: first.bound.label }),
              message: 'the first one',
            },
          ],
        },
        step.file,
      );
    }
    // A departure that skips both leaves no step of that label to be told.
    for (const { label, bearers, bound, file } of whole.plan.departures) {
      const [first, second] = bearers;
      if (!first || !second || seen.has(label)) continue;
      whole.reportAt(
        bound,
        bound.spans['label'] ?? wordSpan(bound),
        {
          message: `${bearers.length} steps of the standard bear the label "${label}", and this departure takes them all: give each its own there.`,
          root: label,
          related: [first, second].map((step) => ({
            bound: step.bound,
            file: step.file,
            ...(step.bound.label && { span: step.bound.label }),
            message: 'one that bears it',
          })),
        },
        file,
      );
    }
  },
});

/** A label with the next number that no step bears. */
function freeLabel(steps: readonly Step[], label: string): string {
  const taken = new Set([...eachStep(steps)].map((step) => step.label));
  let number = 2;
  while (taken.has(`${label}-${number}`)) number++;
  return `${label}-${number}`;
}
