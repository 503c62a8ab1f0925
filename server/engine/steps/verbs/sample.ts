import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Takes a sample of the oil. */
export const sample = verb({
  word: 'sample',
  roles: ['check', 'sheet'],
  minutes: [5, 10],
  form: { what: first(selection(['oil', 'refrigerant'], true), 'what') },
  meaning: 'Takes a sample, of oil or of refrigerant.',
  example: 'sample oil',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Take a sample: ${speech.parts(values.what)}` }),
});
