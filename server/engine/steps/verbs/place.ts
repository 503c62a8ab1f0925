import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { putIn } from '../acts';
import { verb } from '../verb';

/** Sets parts in place, without making up their joints to what stands there already. */
export const place = verb({
  word: 'place',
  roles: ['state', 'check'],
  minutes: [20, 120],
  form: { what: first(selection(['new equipment']), 'parts, or "new equipment"') },
  meaning:
    'Sets parts in place. Joints among parts that come together are made; those to what stands there already are made up by connect or install.',
  example: 'place new equipment',
  perform(values, act) {
    const parts = act.parts(values.what).filter((index) => act.draft.part(index).mounted !== 'new');
    if (parts.length === 0) act.emit({ type: 'no-effect', why: 'it stands in place already' });
    putIn(act, parts);
  },
  say: (values, speech) => ({ sentence: `Set ${speech.parts(values.what)} in place` }),
});
