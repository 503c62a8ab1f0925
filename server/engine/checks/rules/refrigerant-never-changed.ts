import { wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import { refrigerantNamed } from '../../properties';
import { firstStart, has, isCharge, statement } from '../course';
import { defineCheck, type WayOut } from '../define';
import { changesRefrigerant, systemSpot } from '../plant-facts';

/** The head goes from one refrigerant to another, and no step lets the new one in. */
export const refrigerantNeverChanged = defineCheck({
  name: 'refrigerant-never-changed',
  severity: 'warning',
  title: 'No step changes what the plan says is changed',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['compressor-without-refrigerant', 'other-refrigerant', 'not-started', 'shipped-with-other-refrigerant'],
  meaning:
    'The head of the plan names another refrigerant after the work, and when the plan ends none of it has come in: the old one is still there, or nothing. Or the job is a conversion, and neither refrigerant nor oil is another one afterwards.',
  why: 'Label, controls, oil and every limit of the plan go by a refrigerant that is not in the machine.',
  source: 'common practice, no source: what the head of a plan says, held against its steps',
  wrong: {
    base: 'rack',
    instead: [
      ['kind conversion', 'kind conversion # <- here'],
      ['refrigerant R-22 -> R-448A', 'refrigerant R-448A'],
      ['oil mineral -> POE', 'oil POE'],
      ['adjust charge with R-448A', 'leak-check system\n    adjust charge with R-448A'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan, entries } = whole;
    const { before, after } = plan.system.refrigerant;
    const last = entries.at(-1);
    const kind = statement(plan, 'kind');
    if (!last || after === null) return;
    if (plan.kinds.includes('conversion') && kind && !changesSomething(plan)) {
      whole.reportAt(kind, kind.spans['kinds'] ?? wordSpan(kind), {
        message: `The job is a conversion, and refrigerant and oil are the same after it as before: state what they become ("refrigerant ${after} -> …"), or another kind of job.`,
        fixes: plan.kinds.length === 1 ? otherKind(whole.plan) : [],
      });
      return;
    }
    if (before === null || before === after || refrigerantNamed(before) === refrigerantNamed(after)) return;
    // A plan that is only begun is told nothing: what sets the machine going is what a charge has to stand before.
    const ends = entries.some((entry) => has(entry, 'starts')) || firstStart(entries) >= 0;
    const comes = entries.some((entry) => isCharge(entry) || has(entry, 'lets-in'));
    const isIn = last.after.parts.some((part) => part.contents.some((held) => held.refrigerant === after));
    if (!ends || comes || isIn) return;
    const [bound, span] = systemSpot(plan, 'refrigerant', 'after');
    const left = last.after.parts.some((part) => part.contents.some((held) => held.refrigerant === before));
    whole.reportAt(bound, span, {
      message: `${after} is to take the place of ${before}, and no step lets it in${left ? `: ${before} is still there when the plan ends` : ''}; add the steps, or state what stays.`,
      fixes: left ? stays(plan, before) : [],
    });
  },
});

const changesSomething = (plan: Plan): boolean =>
  changesRefrigerant(plan) || plan.system.oil.before !== plan.system.oil.after || plan.system.oil.after === null;

/** The refrigerant stays what it is. */
function stays(plan: Plan, before: string): readonly WayOut[] {
  const [bound] = systemSpot(plan, 'refrigerant');
  const { before: from, after: to } = bound.spans;
  return from && to
    ? [
        {
          title: `State ${before} alone`,
          edits: (mend) => [mend.change(bound, { from: from.from, to: to.to }, before)],
        },
      ]
    : [];
}

/** The same refrigerant before and after is a repair. */
function otherKind(plan: Plan): readonly WayOut[] {
  const kind = statement(plan, 'kind');
  const span = kind?.spans['kinds'];
  return kind && span ? [{ title: 'State a repair', edits: (mend) => [mend.change(kind, span, 'repair')] }] : [];
}
