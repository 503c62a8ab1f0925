import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { endsOf, makeUp, part } from '../acts';
import { torchAt } from '../joints';
import { atEnds, tail, withNitrogenAt, withWhat } from '../slots';
import { verb } from '../verb';

/** Makes up the joints at a part's ends. */
export const connect = verb({
  word: 'connect',
  roles: ['state', 'figure', 'check'],
  minutes: [10, 25],
  form: {
    what: first(selection(), 'lines or parts'),
    ends: atEnds,
    nitrogen: withNitrogenAt,
    with: withWhat,
  },
  meaning:
    'Makes up the joints at the ends of a part. Caps come off; a crimp, choke, tape or plug stays. An end whose neighbour is not in place stays open until it is.',
  example: 'connect each kept line at both ends with nitrogen at 5 cfh',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      if (act.draft.part(index).mounted === 'none') {
        act.emit({ type: 'no-effect', why: `${part(act, index).name} is not in place` });
        continue;
      }
      const ends = endsOf(act, index, values.ends);
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
    sentence: `Connect ${speech.parts(values.what)} at ${values.ends ?? 'both ends'}${values.with ? ` with ${values.with}` : ''}`,
    aside: tail(speech, 'nitrogen at', values.nitrogen),
  }),
});
