import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { close, endsOf } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** A plug in an open end. */
export const plug = verb({
  word: 'plug',
  roles: ['state', 'check'],
  minutes: [1, 2],
  form: { what: first(selection(), 'lines or parts'), ends: atEnds },
  meaning: 'Puts a plug into an open end; it must come out again (unplug).',
  example: 'plug suction-line at near end',
  perform(values, act) {
    for (const index of act.parts(values.what)) close(act, endsOf(act, index, values.ends), 'plug', null);
  },
  say: (values, speech) => ({ sentence: `Plug ${speech.parts(values.what)} at ${values.ends ?? 'both ends'}` }),
});
