import { bounded, quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { close, endsOf, holeLeft } from '../acts';
import { atEnds, tail } from '../slots';
import { verb } from '../verb';

/** Squeezes an open end, so that a flush builds up pressure behind it. The squeezed end is cut off afterwards. */
export const crimp = verb({
  word: 'crimp',
  roles: ['state', 'figure', 'check'],
  minutes: [1, 3],
  form: {
    what: first(selection(), 'lines'),
    ends: atEnds,
    opening: clause('leaving', bounded(quantity('length'), { over: '0 in' }), 'the hole that is left'),
  },
  meaning:
    'Squeezes an open end and leaves a small hole, so that a flush builds up pressure behind it; it is cut off afterwards (trim).',
  example: 'crimp each kept line at far end, leaving 1/8 in',
  perform(values, act) {
    const opening = holeLeft(act, values.opening);
    for (const index of act.parts(values.what))
      close(act, endsOf(act, index, values.ends ?? 'far end'), 'crimp', opening);
  },
  say: (values, speech) => ({
    sentence: `Crimp ${speech.parts(values.what)} at ${values.ends ?? 'far end'}`,
    aside: tail(speech, 'leaving', values.opening),
  }),
});
