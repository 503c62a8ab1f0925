import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { takeOff } from '../acts';
import { verb } from '../verb';

/** Takes parts off and away. */
export const remove = verb({
  word: 'remove',
  roles: ['state', 'check'],
  minutes: [15, 60],
  form: { what: first(selection(['old equipment']), 'parts, or "old equipment"') },
  meaning: 'Takes parts off. What stood between them and their neighbours is open from then on.',
  example: 'remove old equipment',
  perform(values, act) {
    const parts = act.parts(values.what).filter((index) => act.draft.part(index).mounted !== 'none');
    if (parts.length === 0) act.emit({ type: 'no-effect', why: 'it is off already' });
    takeOff(act, parts, 'taken off');
  },
  say: (values, speech) => ({ sentence: `Take off ${speech.parts(values.what)}` }),
});
