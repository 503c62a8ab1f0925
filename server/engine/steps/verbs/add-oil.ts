import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { name, pair } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Adds oil. */
export const addOil = verb({
  word: 'add-oil',
  roles: ['figure', 'check'],
  minutes: [10, 20],
  form: {
    what: first(selection(), 'what'),
    with: clause('with', pair(name('oil'), quantity('volume')), 'oil and volume'),
  },
  meaning: 'Adds oil, for long lines or after a drain.',
  example: 'add-oil compressor with POE 4 fl-oz',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Add oil to ${speech.parts(values.what)}${values.with ? `: ${values.with.a.text}` : ''}`,
    ...(values.with?.b ? { aside: speech.amount(values.with.b) } : {}),
  }),
});
