import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { breach, markAll, newInPlace, part } from '../acts';
import { brazedEnds } from '../joints';
import { tail, withNitrogenAt, withWhat } from '../slots';
import { verb } from '../verb';

/** Takes a part out and puts a new one in, in one step. */
export const change = verb({
  word: 'change',
  roles: ['state', 'figure', 'check'],
  minutes: [15, 45],
  form: {
    what: first(selection(['pump-oil'], true), 'parts, or "pump-oil"'),
    nitrogen: withNitrogenAt,
    with: withWhat,
  },
  meaning:
    'Takes parts out and puts new ones in, in one step. The circuit is open while it is done. Where a part at the joint is stated brazed, a torch makes it.',
  example: 'change txv-1, txv-2',
  perform(values, act) {
    const targets = act.targets(values.what);
    for (const index of targets.flatMap((target) => target.parts)) {
      breach(act, index, 'taken off');
      if (act.draft.part(index).mounted === 'none') continue;
      act.draft.setPart(index, newInPlace(act, part(act, index)));
      const hot = values.nitrogen === undefined ? brazedEnds(act, part(act, index).ends) : part(act, index).ends;
      if (hot.length === 0 || values.with !== undefined) continue;
      act.emit({
        type: 'joins',
        part: index,
        ends: hot,
        torch: true,
        nitrogen: act.quantity(values.nitrogen),
        with: null,
      });
    }
    markAll(act, targets);
  },
  say: (values, speech) => ({
    sentence: `Change ${speech.parts(values.what)} for new${values.with ? ` with ${values.with}` : ''}`,
    aside: tail(speech, 'nitrogen at', values.nitrogen),
  }),
});
