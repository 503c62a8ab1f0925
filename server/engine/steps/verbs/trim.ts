import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { uncover } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Cuts the squeezed end off. */
export const trim = verb({
  word: 'trim',
  roles: ['state', 'check'],
  minutes: [2, 5],
  form: { what: first(selection(), 'lines'), ends: atEnds },
  meaning: 'Cuts a crimped or pinched end off and deburrs it.',
  example: 'trim each kept line at far end',
  perform(values, act) {
    if (uncover(act, act.parts(values.what), ['crimp', 'pinch', 'tape'], values.ends) === 0)
      act.emit({ type: 'no-effect', why: 'there is no crimp to cut off' });
  },
  say: (values, speech) => ({
    sentence: `Cut the crimp off ${speech.parts(values.what)} at ${values.ends ?? 'both ends'} and deburr`,
  }),
});
