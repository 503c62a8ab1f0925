import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { makeUp, part, putIn } from '../acts';
import { torchAt } from '../joints';
import { tail, withNitrogenAt, withWhat } from '../slots';
import { verb } from '../verb';

/** Sets a part in place and makes up its joints. */
export const install = verb({
  word: 'install',
  roles: ['state', 'figure', 'check'],
  minutes: [15, 40],
  form: {
    what: first(selection(), 'parts'),
    nitrogen: withNitrogenAt,
    with: withWhat,
  },
  meaning:
    'Sets parts in place, if they are not, and makes up their joints. Where an old part stands, it comes off in the same step.',
  example: 'install filter-drier with nitrogen at 5 cfh',
  perform(values, act) {
    const parts = act.parts(values.what);
    putIn(act, parts);
    for (const index of parts) {
      const ends = part(act, index).ends;
      makeUp(act, ends);
      act.emit({
        type: 'joins',
        part: index,
        ends,
        torch: torchAt(act, ends, values.nitrogen !== undefined, values.with),
        nitrogen: act.quantity(values.nitrogen),
        with: values.with ?? null,
      });
    }
  },
  say: (values, speech) => ({
    sentence: `Install ${speech.parts(values.what)}${values.with ? ` with ${values.with}` : ''}`,
    aside: tail(speech, 'nitrogen at', values.nitrogen),
  }),
});
