import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { takeOff } from '../acts';
import { verb } from '../verb';

/** Cuts a part out with a tube cutter: no flame on an oily joint. */
export const cutOut = verb({
  word: 'cut-out',
  roles: ['state', 'check'],
  minutes: [5, 15],
  form: { what: first(selection(), 'parts that come out') },
  meaning: 'Cuts parts out with a tube cutter; no flame on an oily joint.',
  example: 'cut-out filter-drier',
  perform(values, act) {
    const parts = act.parts(values.what).filter((index) => act.draft.part(index).mounted !== 'none');
    if (parts.length === 0) act.emit({ type: 'no-effect', why: 'it is out already' });
    takeOff(act, parts, 'cut');
  },
  say: (values, speech) => ({ sentence: `Cut out ${speech.parts(values.what)} with a tube cutter` }),
});
