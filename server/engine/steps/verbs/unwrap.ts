import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Takes the heat guard off. */
export const unwrap = verb({
  word: 'unwrap',
  roles: ['check', 'sheet'],
  minutes: [1, 2],
  form: { what: first(selection([], true), 'what') },
  meaning: 'Takes the heat guard off again.',
  example: 'unwrap expansion-valve',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Take the heat guard off ${speech.parts(values.what)}` }),
});
