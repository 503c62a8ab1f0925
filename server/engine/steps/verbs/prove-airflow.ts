import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { verb } from '../verb';

/** Makes sure that the air moves. */
export const proveAirflow = verb({
  word: 'prove-airflow',
  roles: ['check', 'sheet'],
  minutes: [10, 20],
  form: { what: first(selection(['system', 'water']), 'the system, a part, or "water"') },
  meaning: 'Makes sure that the air (or the water) moves as it should, before the charge is judged.',
  example: 'prove-airflow system',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: values.what?.every(({ noun }) => noun === 'water')
      ? 'Prove that the water flows as it should'
      : `Prove the airflow of ${speech.parts(values.what)}`,
  }),
});
