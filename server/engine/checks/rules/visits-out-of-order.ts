import { wordSpan } from '../../plan/gather';
import type { Step } from '../../plan/step';
import { exactly } from '../../quantity';
import { statedTime } from '../course';
import { defineCheck } from '../define';
import { edits, shown } from '../support';

/** A visit that is due before another one that comes first. */
export const visitsOutOfOrder = defineCheck({
  name: 'visits-out-of-order',
  severity: 'warning',
  title: 'A visit is due before one that has to come first',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'Visits follow each other as the plan has them, and each is due within a time of the start: a later one is due sooner than one before it, or before the time that an earlier one, or it itself, has to wait for.',
  why: 'One of the two is done too late, or the work of the second is done before that of the first that it rests on.',
  source: 'what the plan says, held against itself',
  wrong: {
    base: 'split',
    instead: [
      [
        'label system',
        'label system\n    visit "Drop" within 5 days {\n      read pressures after 15 min\n    }\n    visit "Acid" within 3 days { # <- here\n      read subcooling after 15 min\n    }',
      ],
    ],
  },
  right: { base: 'split' },
  plan({ plan, reportAt }) {
    const visits = plan.steps.filter((each) => each.word.word === 'visit');
    visits.forEach((step, at) => {
      const within = statedTime(step, 'within');
      if (within === 0) return;
      const before = visits.slice(0, at);
      const longest = (of: readonly Step[], slot: string): number =>
        Math.max(0, ...of.map((each) => statedTime(each, slot)));
      const due = longest(before, 'within');
      const wait = longest([...before, step], 'after');
      const least = Math.max(due, wait);
      if (within >= least) return;
      const other = before.find((each) => [statedTime(each, 'within'), statedTime(each, 'after')].includes(least));
      const time = shown(plan, exactly('time', least));
      reportAt(
        step.bound,
        step.spans['within'] ?? wordSpan(step.bound),
        {
          message: `This visit is due within ${shown(plan, exactly('time', within))} of the start, and ${wait > due ? `one is not to come before ${time}` : `one before it has ${time}`}: state times that follow each other.`,
          related: other ? [{ bound: other.bound, file: other.file, message: 'the visit before' }] : [],
          fixes: [{ title: `Within ${time}`, edits: (mend) => edits(mend.replace(step, 'within', `within ${time}`)) }],
        },
        step.file,
      );
    });
  },
});
