import { contentsOfCell } from '../../circuit/settle';
import { decayRules } from '../../reference/evacuation';
import { defineCheck } from '../define';
import { edits, inOwn, vacuum } from '../support';

const rule = decayRules.find((each) => each.name === 'residential')!;

/** A decay test that a wet or leaking circuit passes. */
export const decayLimitHigh = defineCheck({
  name: 'decay-limit-high',
  severity: 'warning',
  title: 'The decay test allows too much',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The level that the evacuation reached, and the rise that is still allowed, come to more than the loosest of the usual rules.',
  why: 'Water that still stands in the oil holds the level there: the test passes, and the acid comes in a year.',
  source: rule.source,
  wrong: {
    base: 'split',
    instead: [['rise at most 300 micron', 'rise at most 900 micron # <- here']],
  },
  right: { base: 'split' },
  step(here) {
    if (here.per !== null) return;
    for (const event of here.events('stands')) {
      const start = Math.max(
        0,
        ...event.spaces.flatMap((space) => space.cells.map((cell) => contentsOfCell(here.before, cell).low)),
      );
      // A level that is too high by itself is the evacuation's finding.
      if (event.rise === null || start > rule.from * 1.01 || start + event.rise <= rule.to * 1.01) continue;
      here.report({
        message: `From ${vacuum(here.plan, start)} this lets the vacuum rise to ${vacuum(here.plan, start + event.rise)}, and the usual limit is ${vacuum(here.plan, rule.to)} (${rule.source}): allow less, or cite the sheet.`,
        slot: 'rise',
        fixes: [
          {
            title: `Allow ${inOwn(here.plan, '300 micron', '40 Pa')}`,
            edits: (mend) =>
              edits(mend.replace(here.step, 'rise', `rise at most ${inOwn(here.plan, '300 micron', '40 Pa')}`)),
          },
        ],
      });
    }
  },
});
