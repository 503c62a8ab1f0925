import { wordSpan } from '../../plan/gather';
import { defineCheck } from '../define';
import { exampleJob, exampleStandard } from './parameter-missing';

const follows = `${exampleJob}follows short-way revision 4\n`;

/** A departure that says no reason. Reads the clause: a reason has no other trace. */
export const departureWithoutReason = defineCheck({
  name: 'departure-without-reason',
  severity: 'warning',
  title: 'A departure from the standard without a reason',
  acceptable: false,
  reads: 'words',
  ground: 'practice',
  meaning: 'The plan changes, skips, replaces or adds to a step of its standard and does not say why.',
  why: 'Whoever reads the sheet in a year cannot tell a considered departure from a slip.',
  source: 'common practice of document control',
  wrong: { base: 'split', file: exampleStandard, plan: `${follows}skip look # <- here` },
  right: { base: 'split', file: exampleStandard, plan: `${follows}skip look because "The old charge is gone"` },
  plan(whole) {
    for (const departure of whole.plan.departures) {
      if (departure.reason?.trim()) continue;
      const { bound } = departure;
      const span = bound.spans['add'] ?? bound.spans['label'] ?? wordSpan(bound);
      whole.reportAt(bound, wordSpan(bound), {
        message: `This departs from the standard at "${departure.label}" and gives no reason: add because "…".`,
        ...(departure.reason === null && {
          fixes: [
            {
              title: 'Add a reason',
              edits: () => [
                {
                  at: { file: departure.file, item: bound.item, from: span.to, to: span.to },
                  text: ' because "reason to be stated"',
                },
              ],
            },
          ],
        }),
      });
    }
  },
});
