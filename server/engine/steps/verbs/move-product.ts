import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Has the goods moved before the cooling stops. */
export const moveProduct = verb({
  word: 'move-product',
  roles: ['sheet'],
  minutes: [10, 60],
  form: { what: first(selection([], true), 'what') },
  meaning: 'Has goods moved out before the cooling stops.',
  example: 'move-product freezer-1',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Have the goods moved out of ${speech.parts(values.what)}` }),
});
