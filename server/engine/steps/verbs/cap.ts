import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { close, endsOf, freeEnds } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Caps open ends, so that air and water stay out. */
export const cap = verb({
  word: 'cap',
  roles: ['state', 'check'],
  minutes: [1, 3],
  form: { what: first(selection(), 'lines, parts or valves with open ends'), ends: atEnds },
  meaning: 'Caps open ends, so that air and water stay out.',
  example: 'cap each kept line at both ends',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      const free = freeEnds(act, index);
      const ends = endsOf(act, index, values.ends).filter((end) => free.includes(end));
      if (ends.length === 0)
        act.emit({ type: 'no-effect', why: `${act.draft.graph.parts[index]!.name} has no open end there` });
      close(act, ends, 'cap', null);
    }
  },
  say: (values, speech) => ({ sentence: `Cap ${speech.parts(values.what)}${values.ends ? ` at ${values.ends}` : ''}` }),
});
