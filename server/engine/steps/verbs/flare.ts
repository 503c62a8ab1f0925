import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { endsOf, mark, markAll } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Cuts the old flares off and makes new ones. */
export const flare = verb({
  word: 'flare',
  roles: ['state', 'check'],
  minutes: [5, 10],
  form: { what: first(selection(), 'lines'), ends: atEnds },
  meaning: 'Cuts the old flares off, deburrs and makes new ones; an old flare is not used again.',
  example: 'flare each kept line at both ends',
  perform(values, act) {
    markAll(act, act.targets(values.what));
    // The end counts, not only the line: the other end may keep its old flare.
    for (const index of act.parts(values.what))
      for (const end of endsOf(act, index, values.ends)) mark(act, `flare end ${end}`);
  },
  say: (values, speech) => ({
    sentence: `Cut off the old flares and make new ones: ${speech.parts(values.what)}, ${values.ends ?? 'both ends'}`,
  }),
});
