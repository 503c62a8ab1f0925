import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Reads plates and lines before anything is touched. */
export const survey = verb({
  word: 'survey',
  roles: ['state', 'check'],
  minutes: [15, 40],
  form: { what: first(selection(['system']), 'what') },
  meaning: 'Reads plates, line sizes, wall and how things stand, before anything is touched.',
  example: 'survey system',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({ sentence: `Survey ${speech.parts(values.what)}: plates, line sizes, condition` }),
});
