import { selection } from '../../plan/selection';
import { name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { forTime, into, tail } from '../slots';
import { verb } from '../verb';

/** Cleans a part that is off the circuit, on the bench, and blows it dry there. */
export const benchFlush = verb({
  word: 'bench-flush',
  roles: ['state', 'figure', 'check'],
  minutes: [20, 40],
  form: {
    what: first(selection(), 'parts that are off'),
    with: clause('with', name('solvent'), 'a solvent'),
    time: forTime,
    into,
  },
  meaning: 'Cleans parts on the bench, off the circuit, and blows them dry there.',
  example: 'bench-flush evaporator into container',
  perform(values, act) {
    const parts = act.parts(values.what);
    act.emit({ type: 'cleans', parts });
    for (const index of parts)
      act.draft.setPart(index, {
        residue: { oil: null, share: 0, acid: false },
        finalPurge: act.cause,
        wet: null,
        unpurged: null,
      });
  },
  say: (values, speech) => ({
    sentence: `On the bench, flush and blow dry ${speech.parts(values.what)}${values.into ? `, into ${values.into.text}` : ''}`,
    aside: tail(speech, 'for', values.time),
  }),
});
