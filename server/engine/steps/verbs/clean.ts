import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Cleans strainers and the like. */
export const cleanStep = verb({
  word: 'clean',
  roles: ['check', 'sheet'],
  minutes: [10, 20],
  form: { what: first(selection(['strainers', 'screens'], true), 'what') },
  meaning: 'Cleans strainers, screens and coils from outside.',
  example: 'clean strainers',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Clean ${speech.parts(values.what)}` }),
});
