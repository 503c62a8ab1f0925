import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { uncover } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Takes plugs and tape out. */
export const unplug = verb({
  word: 'unplug',
  roles: ['state', 'check'],
  minutes: [1, 2],
  form: { what: first(selection(), 'lines or parts'), ends: atEnds },
  meaning: 'Takes plugs and tape off again.',
  example: 'unplug suction-line at near end',
  perform(values, act) {
    if (uncover(act, act.parts(values.what), ['plug', 'tape'], values.ends) === 0)
      act.emit({ type: 'no-effect', why: 'there is no plug in it' });
  },
  say: (values, speech) => ({
    sentence: `Take plug and tape off ${speech.parts(values.what)}${values.ends ? ` at ${values.ends}` : ''}`,
  }),
});
