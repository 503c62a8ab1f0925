import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { breach, markAll, newInPlace, part } from '../acts';
import { verb } from '../verb';

/** Renews wearing parts: seals, valve cores, a sight glass. */
export const renew = verb({
  word: 'renew',
  roles: ['state', 'check'],
  minutes: [15, 45],
  form: { what: first(selection(['seals', 'cores', 'strainers'], true), 'seals, cores, or parts of the circuit') },
  meaning: 'Renews wearing parts. A part of the circuit that is renewed is open while it is done.',
  example: 'renew seals, cores, sight-glass',
  perform(values, act) {
    const targets = act.targets(values.what);
    for (const index of targets.flatMap((target) => target.parts)) {
      breach(act, index, 'undone');
      if (part(act, index).standing === 'new') act.draft.setPart(index, newInPlace(act, part(act, index)));
    }
    markAll(act, targets);
  },
  say: (values, speech) => ({ sentence: `Renew ${speech.parts(values.what)}` }),
});
