import { expect, it } from 'vitest';
import { checks } from '../../../server/engine/checks/all';

/** Checks that look at words and have neither state nor figure behind them, each with the reason. */
const reasons: Readonly<Record<string, string>> = {
  'unknown-name': 'a name is known or it is not',
  'back-to-nowhere': 'a label stands before another or it does not',
  'duplicate-label': 'labels are all that departures and records point with',
  'parameter-missing': 'a statement that is missing has no state',
  'standard-revision': 'revisions are numbers that people give',
  'standard-not-for-kind': 'the kind of a job is what its author says',
  'departure-without-reason': 'a reason has no other trace',
  'idle-departure': 'it is about the text of the departure',
  'house-rule-not-understood': 'it is about words that no check understands',
  'record-of-nothing': 'an answer is found by its label alone',
  'record-of-other-revision': 'revisions are numbers that people give',
  'record-gap': 'an answer is there or it is not',
  'checked-after-start': 'rotation and water are seen by people; no state of the plant shows them',
  'burnout-cause': 'what caused a burnout is found by people; the plan can only say that they look for it',
};

it('only these checks read words, each for a reason', () => {
  expect(
    checks
      .filter((check) => check.reads === 'words')
      .map((check) => check.name)
      .sort(),
  ).toEqual(Object.keys(reasons).sort());
});

it('what rests on the law is not accepted away, unless it hangs on what the plan cannot know', () => {
  const accepted = checks.filter((check) => check.ground === 'law' && check.severity === 'error' && check.acceptable);
  expect(accepted.map((check) => check.name)).toEqual([]);
});
