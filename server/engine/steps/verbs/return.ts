import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** Takes magnets off and stems back: the valves follow their control again. */
export const returnToControl = verb({
  word: 'return',
  roles: ['state', 'check'],
  minutes: [1, 3],
  form: {
    what: first(selection(), 'valves that were held open'),
    to: clause('to', choice('control', 'service'), 'what they go back to'),
  },
  meaning: 'Takes the magnet off or the stem back, so that a valve follows its control again.',
  example: 'return sol-1, epr-3 to control',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      const part = act.draft.graph.parts[index]!;
      if (part.kind.shuts)
        act.draft.setPart(index, { position: part.kind.shuts === 'hand' ? 'open' : 'control', heldBy: null });
    }
  },
  say: (values, speech) => ({ sentence: `Return ${speech.parts(values.what)} to ${values.to ?? 'control'}` }),
});
