import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { defineCheck } from '../define';
import { exampleJob, exampleStandard } from './parameter-missing';

/** A standard that was written for other work. Reads the kinds that both state. */
export const standardNotForKind = defineCheck({
  name: 'standard-not-for-kind',
  severity: 'warning',
  title: 'The standard is not for this kind of job',
  acceptable: true,
  noFix:
    "Another standard brings other steps: whether one of the shop's suits, or which steps are to be added, is for the author.",
  reads: 'words',
  ground: 'practice',
  meaning: 'The standard says `applies-to …`, and the kind of the job is not among them.',
  why: 'A procedure for one kind of work leaves out what another needs: a burnout needs its clean-up, a conversion its oil.',
  source: 'common practice',
  wrong: {
    base: 'split',
    file: exampleStandard,
    plan: `${exampleJob.replace('repair', 'repair, burnout')}follows short-way revision 4 # <- here`,
  },
  right: { base: 'split', file: exampleStandard, plan: `${exampleJob}follows short-way revision 4` },
  plan(whole) {
    const { plan } = whole;
    const applies = plan.standard && child(plan.standard.bound.block, 'applies-to');
    const follows = child(plan.declaration.bound.block, 'follows');
    if (!plan.standard || !applies || !follows) return;
    const kinds = (applies.values['kinds'] as readonly string[] | undefined) ?? [];
    // A burnout is a repair, too: who says both means the burnout.
    const missing = plan.kinds.filter(
      (kind) =>
        !kinds.includes(kind) && !(kind === 'repair' && plan.kinds.includes('burnout') && kinds.includes('burnout')),
    );
    if (kinds.length === 0 || missing.length === 0) return;
    whole.reportAt(follows, follows.spans['standard'] ?? wordSpan(follows), {
      message: `"${plan.standard.name}" is for ${kinds.join(', ')}, and this job is a ${missing.join(' and ')}: follow a standard for it, or add the steps that it needs.`,
      related: [{ bound: applies, file: plan.standard.file, message: 'what it is for' }],
    });
  },
});
