import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Takes tags off. */
export const untag = verb({
  word: 'untag',
  roles: ['sheet'],
  minutes: [1, 3],
  form: { what: first(selection([], true), 'what') },
  meaning: 'Takes the tags off again.',
  example: 'untag valve-as',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Take the tags off ${speech.parts(values.what)}` }),
});
