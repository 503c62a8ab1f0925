import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { breach } from '../acts';
import { verb } from '../verb';

/** New cores into a drier shell. */
export const replaceCores = verb({
  word: 'replace-cores',
  roles: ['state', 'check'],
  minutes: [10, 20],
  form: { what: first(selection(), 'driers') },
  meaning: 'Puts new cores into a drier shell. The shell is open while it is done.',
  example: 'replace-cores suction-drier',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      breach(act, index, 'undone');
      act.draft.setPart(index, { cores: 'in' });
    }
  },
  say: (values, speech) => ({ sentence: `Put new cores into ${speech.parts(values.what)}` }),
});
