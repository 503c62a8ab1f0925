import { quantity } from '../../plan/amounts';
import { text } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** The crew comes back. */
export const visit = verb({
  word: 'visit',
  roles: ['check', 'sheet'],
  minutes: [10, 20],
  blockOf: 'steps',
  blockNeeded: true,
  form: {
    title: first(text(), 'what for'),
    within: clause('within', quantity('time'), 'how soon'),
    after: clause('after', quantity('time'), 'not before'),
  },
  meaning: 'The crew comes back, within a time of the start.',
  example: 'visit "Acid and drier" within 2 days { … }',
  say: (values, speech) => ({
    sentence: values.title ?? 'Visit',
    ...(values.within ? { aside: `within ${speech.amount(values.within)}` } : {}),
  }),
});
