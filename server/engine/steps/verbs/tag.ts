import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Hangs a tag on something. */
export const tag = verb({
  word: 'tag',
  roles: ['sheet'],
  minutes: [1, 3],
  form: { what: first(selection([], true), 'what') },
  meaning: 'Hangs a tag on a valve, a switch or a cylinder.',
  example: 'tag valve-as',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Tag ${speech.parts(values.what)}` }),
});
