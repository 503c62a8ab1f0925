import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { thing } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { tail } from '../slots';
import { verb } from '../verb';

/** Makes sure of something that only people can see. */
export const checkStep = verb({
  word: 'check',
  roles: ['check', 'sheet'],
  minutes: [3, 10],
  form: {
    what: first(selection(['ignition-sources', 'rotation', 'airflow'], true), 'what'),
    within: clause('within', quantity('length'), 'how far round'),
    for: clause('for', thing(), 'what for'),
  },
  meaning: 'Makes sure of something that only people can see.',
  example: 'check ignition-sources within 10 ft',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Check ${speech.parts(values.what)}`,
    aside: tail(speech, 'within', values.within),
  }),
});
