import { defineCheck, type Whole } from '../define';
import { touched } from '../plant';

/** The circuit says that a part is new or gone, and no step makes it so. */
export const partNotAsStated = defineCheck({
  name: 'part-not-as-stated',
  severity: 'warning',
  title: 'A part stated new or removed stays as it was',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open'],
  meaning:
    'The circuit states a part as new, added or removed, and when the plan ends the old one still stands there, or the added one was never fitted.',
  why: 'The crew brings the part home again; the old one goes on running in a machine that was counted on without it.',
  source: 'common practice',
  wrong: {
    base: 'rack',
    instead: [
      ['txv-1: expansion-valve new', 'txv-1: expansion-valve new # <- here'],
      ['change txv-1, txv-2', 'change txv-2'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last || whole.plan.kinds.includes('new')) return;
    for (const part of whole.plan.graph.parts) {
      if (!touched(whole.plan.graph, part.index)) continue;
      const { mounted } = last.after.parts[part.index]!;
      const fault =
        (part.standing === 'new' && mounted === 'old') || (part.standing === 'added' && never(whole, part.index))
          ? 'is stated new and no step fits it'
          : part.standing === 'removed' && mounted === 'old'
            ? 'is stated removed and no step takes it off'
            : null;
      if (!fault) continue;
      whole.reportPart(part.index, {
        message: `${part.name} ${fault}: add the step, or state it kept.`,
        concerns: [part.index],
      });
    }
  },
});

/** A piercing valve is added for the job and taken off again; what never stood there was forgotten. */
const never = (whole: Whole, part: number): boolean =>
  whole.entries.every((entry) => entry.after.parts[part]!.mounted === 'none');
