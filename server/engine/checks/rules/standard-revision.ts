import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { defineCheck } from '../define';
import { exampleJob, exampleStandard } from './parameter-missing';

/** A job that was written against another revision of its standard. Reads numbers of revisions. */
export const standardRevision = defineCheck({
  name: 'standard-revision',
  severity: 'warning',
  title: 'The job follows another revision of its standard',
  acceptable: true,
  reads: 'words',
  ground: 'practice',
  meaning: 'The plan names a revision of its standard that is not the one that the file holds.',
  why: 'Steps may have changed since the job was written; nobody has looked at it against what the crew will read.',
  source: 'common practice of document control',
  wrong: { base: 'split', file: exampleStandard, plan: `${exampleJob}follows short-way revision 3 # <- here` },
  right: { base: 'split', file: exampleStandard, plan: `${exampleJob}follows short-way revision 4` },
  plan(whole) {
    const { plan } = whole;
    if (!plan.standard) return;
    const follows = child(plan.declaration.bound.block, 'follows');
    const held = child(plan.standard.bound.block, 'revision')?.values['number'] as number | undefined;
    if (!follows || held === undefined || plan.followedRevision === held) return;
    const span = follows.spans['revision'];
    const at = { file: plan.file, item: follows.item };
    if (!span) {
      const standard = follows.spans['standard'] ?? wordSpan(follows);
      whole.reportAt(follows, standard, {
        severity: 'information',
        message: `The plan does not say which revision of "${plan.standard.name}" it was written against; the file holds revision ${held}.`,
        fixes: [
          {
            title: `Add "revision ${held}"`,
            edits: () => [{ at: { ...at, from: standard.to, to: standard.to }, text: ` revision ${held}` }],
          },
        ],
      });
      return;
    }
    const older = (plan.followedRevision ?? 0) < held;
    whole.reportAt(follows, span, {
      message: older
        ? `The plan was written against revision ${plan.followedRevision} of "${plan.standard.name}", and the file holds revision ${held}: go through what has changed, then raise it.`
        : `There is no revision ${plan.followedRevision} of "${plan.standard.name}": the file holds revision ${held}.`,
      fixes: [
        { title: `Follow revision ${held}`, edits: () => [{ at: { ...at, ...span }, text: `revision ${held}` }] },
      ],
    });
  },
});
