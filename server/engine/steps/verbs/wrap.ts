import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Heat guard round what a torch must not warm. */
export const wrap = verb({
  word: 'wrap',
  roles: ['check', 'sheet'],
  minutes: [2, 5],
  form: { what: first(selection([], true), 'what') },
  meaning: 'Puts wet cloth or heat paste on what a torch must not warm.',
  example: 'wrap expansion-valve',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Wrap ${speech.parts(values.what)} against the heat` }),
});
