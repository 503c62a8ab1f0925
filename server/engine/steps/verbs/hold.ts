import { choice, text } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { mark } from '../acts';
import { verb } from '../verb';

/** A hold point: the work stops until somebody has seen and signed. */
export const hold = verb({
  word: 'hold',
  roles: ['check', 'sheet'],
  minutes: [5, 30],
  form: {
    what: first(text(), 'what must be seen'),
    by: clause('by', choice('lead', 'fitter', 'owner', 'inspector'), 'who signs'),
  },
  meaning: 'The work stops until somebody has seen it and signed.',
  example: 'hold "Lead sees a clean cloth from each line" by lead',
  perform: (values, act) => mark(act, `hold by ${values.by ?? 'lead'}`),
  say: (values) => ({ sentence: values.what ?? 'Hold', aside: values.by ?? 'lead' }),
});
