import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Tells somebody. */
export const notify = verb({
  word: 'notify',
  roles: ['sheet'],
  minutes: [2, 10],
  form: { what: first(selection(['owner', 'monitoring'], true), 'what') },
  meaning: 'Tells owner, monitoring or the authority.',
  example: 'notify owner',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Tell ${speech.parts(values.what)}` }),
});
