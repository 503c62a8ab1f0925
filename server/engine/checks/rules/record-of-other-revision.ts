import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { defineCheck } from '../define';

/** A record that was taken against another revision. Reads numbers of revisions. */
export const recordOfOtherRevision = defineCheck({
  name: 'record-of-other-revision',
  severity: 'warning',
  title: 'The record was taken against another revision',
  acceptable: false,
  noFix: 'Only the crew can say which sheet it had.',
  reads: 'words',
  ground: 'practice',
  meaning: 'The record names a revision of its plan that is not the one that the file holds.',
  why: 'Its answers may belong to steps that have changed since, or that the crew never saw.',
  source: 'common practice of document control',
  wrong: { base: 'split', after: 'record done {\n  of example revision 2 # <- here\n  signed lead 17:00\n}' },
  right: { base: 'split', after: 'record done {\n  of example revision 1\n  signed lead 17:00\n}' },
  record({ declaration, view, report }) {
    const of = child(declaration.bound.block, 'of');
    if (!of || !view || view.plan.revision === null) return;
    const revision = of.values['revision'] as number | undefined;
    if (revision === view.plan.revision) return;
    report(of, of.spans['revision'] ?? wordSpan(of), {
      message:
        revision === undefined
          ? `The record does not say which revision of the plan was followed; the file holds revision ${view.plan.revision}.`
          : `The record was taken against revision ${revision}, and the plan is at revision ${view.plan.revision}: say which sheet the crew had.`,
    });
  },
});
