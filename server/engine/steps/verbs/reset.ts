import { selection } from '../../plan/selection';
import { name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Sets a control to the new refrigerant. */
export const reset = verb({
  word: 'reset',
  roles: ['check', 'sheet'],
  minutes: [5, 20],
  form: {
    what: first(selection(['low-pressure-switch', 'head-pressure-control'], true), 'what'),
    for: clause('for', name('refrigerant'), 'the new refrigerant'),
  },
  meaning: 'Sets controls to the pressures of the new refrigerant.',
  example: 'reset low-pressure-switch, epr-3 for R-448A',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Set ${speech.parts(values.what)}${values.for ? ` for ${values.for.text}` : ''}`,
  }),
});
