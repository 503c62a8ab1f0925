import { text } from '../../plan/terms';
import { first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** A heading over steps that belong together. */
export const phase = verb({
  word: 'phase',
  roles: ['sheet'],
  minutes: [0, 0],
  blockOf: 'steps',
  blockNeeded: true,
  form: { title: first(text(), 'the heading') },
  meaning: 'A heading over steps that belong together; departures and if-fails can speak of its label.',
  example: 'phase "Clean the lines" { … }',
  say: (values) => ({ sentence: values.title ?? '' }),
});
