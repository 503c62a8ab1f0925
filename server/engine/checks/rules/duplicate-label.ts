import { type Bound, child } from '../../plan/bind';
import { eachStep, type Step, stepsOf } from '../../plan/step';
import { defineCheck, type Whole } from '../define';

/** Two steps of one label. It reads labels: they are all that departures and records have to point with. */
export const duplicateLabel = defineCheck({
  name: 'duplicate-label',
  severity: 'error',
  title: 'Two steps bear one label',
  acceptable: false,
  reads: 'words',
  ground: 'practice',
  meaning:
    'A label stands before more than one step of the plan as it will be done, or of the standard that it follows.',
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
    const { standard, steps } = whole.plan;
    const told = new Set<Bound>();
    // A departure may leave out both; the next job that follows the standard meets them again.
    const own = standard ? stepsOf(child(standard.bound.block, 'steps')?.block ?? [], standard.file) : [];
    for (const list of [steps, own]) {
      const seen = new Map<string, Step>();
      for (const step of eachStep(list)) {
        if (!step.label) continue;
        const first = seen.get(step.label);
        if (!first) seen.set(step.label, step);
        else if (!told.has(step.bound)) {
          told.add(step.bound);
          report(whole, step, first);
        }
      }
    }
  },
});

function report(whole: Whole, step: Step, first: Step): void {
  const { label } = step.bound;
  whole.reportAt(
    step.bound,
    label ?? { from: 0, to: 1 },
    {
      message: `"${step.label}" is the label of an earlier step too (${first.text}): a departure, a record or a step that goes back to it cannot tell them apart, so give this one its own.`,
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

/** A label with the next number that no step bears. */
function freeLabel(steps: readonly Step[], label: string): string {
  const taken = new Set([...eachStep(steps)].map((step) => step.label));
  let number = 2;
  while (taken.has(`${label}-${number}`)) number++;
  return `${label}-${number}`;
}
