import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Tests oil for acid. */
export const acidTest = verb({
  word: 'acid-test',
  roles: ['check', 'sheet'],
  minutes: [10, 20],
  form: {
    what: first(selection(['system']), 'what'),
    severe: clause('severe above', quantity('acid-number'), 'where it counts as a severe burnout'),
    most: clause('at most', quantity('acid-number'), 'the limit'),
  },
  meaning: 'Tests the oil for acid, against a limit.',
  example: 'acid-test system, at most 0.05 mgKOH/g',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Test the oil for acid: ${speech.parts(values.what)}`,
    aside: [
      values.severe ? `severe above ${speech.amount(values.severe)}` : '',
      values.most ? `at most ${speech.amount(values.most)}` : '',
    ]
      .filter(Boolean)
      .join(', '),
  }),
});
