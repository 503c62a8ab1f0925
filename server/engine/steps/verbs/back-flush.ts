import { selection } from '../../plan/selection';
import { name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { follow, wet } from '../flow';
import { forTime, into, outdoors, tail } from '../slots';
import { verb } from '../verb';

/** A flush from the far end, against the flow that brought the dirt. */
export const backFlush = verb({
  word: 'back-flush',
  roles: ['state', 'figure', 'check'],
  minutes: [3, 8],
  form: {
    what: first(selection(), 'lines, or a coil that is shut off for it'),
    with: clause('with', name('solvent'), "a solvent; the plan's if nothing is said"),
    time: forTime,
    into,
    outdoors,
  },
  meaning: 'Sends solvent through from the far end, against the flow that brought the dirt.',
  example: 'back-flush suction-line into container',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      const flow = follow(act, {
        medium: 'solvent',
        purpose: 'flush',
        line: act.draft.graph.parts[index]!,
        from: 'far end',
        level: null,
        time: act.quantity(values.time),
        container: values.into !== undefined,
        outdoors: values.outdoors === true,
        per: false,
      });
      act.emit(flow);
      wet(act, flow);
    }
  },
  say: (values, speech) => ({
    sentence: `Flush from the far end, one at a time: ${speech.parts(values.what)}${values.into ? `, into ${values.into.text}` : ''}`,
    aside: tail(speech, 'for', values.time),
  }),
});
