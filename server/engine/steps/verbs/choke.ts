import { bounded, quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { close, endsOf, holeLeft } from '../acts';
import { atEnds, tail } from '../slots';
import { verb } from '../verb';

/** Screws a choke on an open end instead of crimping it. */
export const choke = verb({
  word: 'choke',
  roles: ['state', 'figure', 'check'],
  minutes: [1, 3],
  form: {
    what: first(selection(), 'lines'),
    ends: atEnds,
    opening: clause('to', bounded(quantity('length'), { over: '0 in' }), 'the hole in the choke'),
  },
  meaning:
    'Screws a choke with a small hole on an open end, where a crimp would spoil the flare; it is taken off afterwards (take-off).',
  example: 'choke each kept line at far end to 1/8 in',
  perform(values, act) {
    const opening = holeLeft(act, values.opening);
    for (const index of act.parts(values.what))
      close(act, endsOf(act, index, values.ends ?? 'far end'), 'choke', opening);
  },
  say: (values, speech) => ({
    sentence: `Put a choke on ${speech.parts(values.what)} at ${values.ends ?? 'far end'}`,
    aside: tail(speech, 'hole', values.opening),
  }),
});
