import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** Stops the system. */
export const stop = verb({
  word: 'stop',
  roles: ['state', 'check'],
  minutes: [2, 5],
  form: { what: first(selection(['system']), 'what') },
  meaning: 'Stops the system at its control; power stays on.',
  example: 'stop system',
  perform: (_values, act) => act.draft.set({ running: false, resumes: false }),
  say: (values, speech) => ({ sentence: `Stop ${speech.parts(values.what)}` }),
});
