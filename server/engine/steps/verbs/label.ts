import { selection } from '../../plan/selection';
import { text } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Puts the plates and labels on. */
export const labelSystem = verb({
  word: 'label',
  roles: ['check', 'sheet'],
  minutes: [5, 10],
  form: { what: first(selection(['system', 'cylinder']), 'what'), on: clause('on', text(), 'a plate of its own') },
  meaning: 'Puts the new labels on: refrigerant, charge, oil, date; on a recovery cylinder what is in it.',
  example: 'label system',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Label ${speech.parts(values.what)}: refrigerant, charge, oil, date${values.on ? ` (${values.on})` : ''}`,
  }),
});
