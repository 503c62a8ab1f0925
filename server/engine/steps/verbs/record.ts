import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Writes down what the record asks for. */
export const recordStep = verb({
  word: 'record',
  roles: ['check', 'sheet'],
  minutes: [5, 15],
  form: { what: first(selection(['quantities', 'readings', 'full-charge'], true), 'what') },
  meaning: 'Writes down quantities and readings.',
  example: 'record quantities, readings',
  perform(values, act) {
    markAll(act, act.targets(values.what));
    act.emit({ type: 'reads', of: values.what?.map((selector) => selector.noun) ?? [] });
  },
  say: (values, speech) => ({ sentence: `Record ${speech.parts(values.what)}` }),
});
