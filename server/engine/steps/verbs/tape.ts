import { bounded, quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { close, endsOf } from '../acts';
import { atEnds, tail } from '../slots';
import { verb } from '../verb';

/** Tape over an open end, with a hole or without. */
export const tape = verb({
  word: 'tape',
  roles: ['state', 'figure', 'check'],
  minutes: [1, 2],
  form: {
    what: first(selection(), 'lines'),
    ends: atEnds,
    opening: clause('leaving', bounded(quantity('length'), { over: '0 in' }), 'the hole in it'),
  },
  meaning: 'Tape over an open end; with a hole in it, it serves as a crimp for a light flush.',
  example: 'tape suction-line at far end, leaving 1/4 in',
  perform(values, act) {
    for (const index of act.parts(values.what))
      close(act, endsOf(act, index, values.ends ?? 'far end'), 'tape', act.quantity(values.opening)?.low ?? null);
  },
  say: (values, speech) => ({
    sentence: `Tape ${speech.parts(values.what)} at ${values.ends ?? 'far end'}`,
    aside: tail(speech, 'hole', values.opening),
  }),
});
