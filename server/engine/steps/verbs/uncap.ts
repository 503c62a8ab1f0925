import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { uncover } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Takes caps off. */
export const uncap = verb({
  word: 'uncap',
  roles: ['state', 'check'],
  minutes: [1, 2],
  form: { what: first(selection(), 'lines or parts'), ends: atEnds },
  meaning: 'Takes caps off.',
  example: 'uncap each kept line at both ends',
  perform(values, act) {
    if (uncover(act, act.parts(values.what), ['cap'], values.ends) === 0)
      act.emit({ type: 'no-effect', why: 'there is no cap on it' });
  },
  say: (values, speech) => ({
    sentence: `Take the caps off ${speech.parts(values.what)}${values.ends ? ` at ${values.ends}` : ''}`,
  }),
});
