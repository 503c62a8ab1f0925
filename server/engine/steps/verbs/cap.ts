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
    const parts = act.parts(values.what).map((index) => {
      const free = freeEnds(act, index);
      const asked = endsOf(act, index, values.ends);
      return {
        index,
        ends: asked.filter((end) => free.includes(end)),
        joined: values.ends ? asked.filter((end) => !free.includes(end) && act.draft.end(end).closure === null) : [],
      };
    });
    // Where nothing at all is open, the ends that are meant are opened later and stay bare.
    const nothing = parts.length > 0 && parts.every(({ ends }) => ends.length === 0);
    for (const { index, ends, joined } of parts) {
      if (ends.length === 0)
        act.emit({
          type: 'no-effect',
          why: `${act.draft.graph.parts[index]!.name} has no open end there`,
          ...(nothing && { grave: true }),
        });
      // Nothing comes on an end that is joined, but somebody meant it to.
      else for (const end of joined) act.emit({ type: 'closes', part: index, end, closure: 'cap' });
      close(act, ends, 'cap', null);
    }
  },
  say: (values, speech) => ({ sentence: `Cap ${speech.parts(values.what)}${values.ends ? ` at ${values.ends}` : ''}` }),
});
