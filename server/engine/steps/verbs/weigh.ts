import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Weighs a cylinder. */
export const weigh = verb({
  word: 'weigh',
  roles: ['check', 'sheet'],
  minutes: [2, 5],
  form: { what: first(selection(['cylinder'], true), 'what') },
  meaning: 'Weighs a cylinder before and after.',
  example: 'weigh cylinder',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Weigh ${speech.parts(values.what)} and write it down` }),
});
