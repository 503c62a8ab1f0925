import { isLine } from '../../circuit/kinds';
import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { close, endsOf, markAll, part } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Pinches a tube shut, as on factory-sealed machines. */
export const pinchOff = verb({
  word: 'pinch-off',
  roles: ['state', 'check'],
  minutes: [2, 5],
  form: { what: first(selection(), 'lines, or a process tube'), ends: atEnds },
  meaning: 'Pinches a tube shut for good and seals it; a pinched end counts as closed.',
  example: 'pinch-off process-tube',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      // The stub of a process tube stands beside the flow: pinching it shuts no way through.
      if (isLine(part(act, index).kind)) close(act, endsOf(act, index, values.ends ?? 'far end'), 'pinch', null);
    }
    markAll(act, act.targets(values.what));
  },
  say: (values, speech) => ({
    sentence: `Pinch off and seal ${speech.parts(values.what)}${values.ends ? ` at ${values.ends}` : ''}`,
  }),
});
