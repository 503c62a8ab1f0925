import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { breach } from '../acts';
import { verb } from '../verb';

/** Takes the cores out of a drier shell. */
export const removeCores = verb({
  word: 'remove-cores',
  roles: ['state', 'check'],
  minutes: [10, 20],
  form: { what: first(selection(), 'driers') },
  meaning: "Takes a drier's cores out and closes the shell again. The shell is open while it is done.",
  example: 'remove-cores suction-drier',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      breach(act, index, 'undone');
      act.draft.setPart(index, { cores: 'out' });
    }
  },
  say: (values, speech) => ({ sentence: `Take the cores out of ${speech.parts(values.what)} and close the shell` }),
});
