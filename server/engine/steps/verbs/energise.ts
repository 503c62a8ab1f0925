import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { mark } from '../acts';
import { forTime, tail } from '../slots';
import { verb } from '../verb';

/** Control power alone: heaters and valve motors live, compressors still locked out. */
export const energise = verb({
  word: 'energise',
  roles: ['state', 'check'],
  minutes: [2, 5],
  form: { what: first(selection(['controls']), '"controls"'), time: forTime },
  meaning: 'Gives power to heaters and valve motors while compressors stay locked out.',
  example: 'energise controls for 24 h',
  perform(_values, act) {
    if (act.draft.now().power !== 'on') {
      act.draft.set({ power: 'controls', powerBy: act.cause });
      act.emit({ type: 'powers', to: 'controls' });
    }
    mark(act, 'energise controls');
  },
  say: (values, speech) => ({
    sentence: `Give power to ${speech.parts(values.what)} only; what is locked out stays locked out`,
    aside: tail(speech, 'for', values.time),
  }),
});
