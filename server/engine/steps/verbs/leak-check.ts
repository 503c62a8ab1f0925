import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Looks for leaks while the old charge is still in, or at the end. */
export const leakCheck = verb({
  word: 'leak-check',
  roles: ['check', 'sheet'],
  minutes: [15, 45],
  form: { what: first(selection(['system']), 'what') },
  meaning: 'Looks for leaks with detector or bubbles.',
  example: 'leak-check system',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Look for leaks: ${speech.parts(values.what)}` }),
});
