import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { letOut, mark, part } from '../acts';
import { verb } from '../verb';
import { hasWaterSide } from '../water';

/** Empties what stands in a trap or a low spot. */
export const drain = verb({
  word: 'drain',
  roles: ['state', 'check'],
  minutes: [5, 15],
  form: {
    what: first(selection(), 'lines or vessels'),
    at: clause('at', choice('trap', 'low-spot', 'bottom', 'water-side'), 'where'),
  },
  meaning:
    'Lets out what stands in a trap, a low spot or a vessel. Of an exchanger with water on its other side the water is meant.',
  example: 'drain suction-line at trap',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      // The refrigerant's side of such an exchanger has no drain.
      if (values.at === 'water-side' || hasWaterSide(part(act, index))) {
        mark(act, `drain water-side of ${part(act, index).name}`);
        continue;
      }
      if (act.draft.part(index).mounted !== 'none') letOut(act, index);
      act.draft.setPart(index, { drained: act.cause });
    }
  },
  say: (values, speech) => ({
    sentence: `Drain ${speech.parts(values.what)}${values.at ? ` at the ${values.at}` : ''}`,
  }),
});
