import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
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
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Cut off the old flares and make new ones: ${speech.parts(values.what)}, ${values.ends ?? 'both ends'}`,
  }),
});
