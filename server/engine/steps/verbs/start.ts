import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { mark } from '../acts';
import { machines } from '../machines';
import { verb } from '../verb';

/** Lets the system run. */
export const start = verb({
  word: 'start',
  roles: ['state', 'check'],
  minutes: [5, 15],
  form: {
    what: first(selection(['system']), 'the system or one machine'),
    mode: clause('in', choice('cooling', 'heating', 'hot-gas', 'defrost'), 'which way'),
  },
  meaning: 'Starts the system, or turns it round while it runs.',
  example: 'start system in cooling',
  perform(values, act) {
    act.emit({ type: 'starts', mode: values.mode ?? null, parts: machines(act, values.what) });
    act.draft.set({ running: true });
    mark(act, `start ${values.mode ?? 'system'}`);
  },
  say: (values, speech) => ({
    sentence: `Start ${speech.parts(values.what)}${values.mode ? ` in ${values.mode}` : ''}`,
  }),
});
