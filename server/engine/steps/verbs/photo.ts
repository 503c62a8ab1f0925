import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Takes a picture for the file. */
export const photo = verb({
  word: 'photo',
  roles: ['sheet'],
  minutes: [1, 3],
  form: { what: first(selection([], true), 'what') },
  meaning: 'Takes a picture for the file.',
  example: 'photo joints',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Take a picture of ${speech.parts(values.what)}` }),
});
