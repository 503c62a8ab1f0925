import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { breach, markAll, newInPlace } from '../acts';
import { verb } from '../verb';

/** Takes a part out and puts a new one in, in one step. */
export const change = verb({
  word: 'change',
  roles: ['state', 'check'],
  minutes: [15, 45],
  form: { what: first(selection(['pump-oil'], true), 'parts, or "pump-oil"') },
  meaning: 'Takes parts out and puts new ones in, in one step. The circuit is open while it is done.',
  example: 'change txv-1, txv-2',
  perform(values, act) {
    const targets = act.targets(values.what);
    for (const index of targets.flatMap((target) => target.parts)) {
      breach(act, index, 'taken off');
      act.draft.setPart(index, newInPlace(act));
    }
    markAll(act, targets);
  },
  say: (values, speech) => ({ sentence: `Change ${speech.parts(values.what)} for new` }),
});
