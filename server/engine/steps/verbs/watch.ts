import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { markAll } from '../acts';
import { forTime, tail } from '../slots';
import { verb } from '../verb';

/** Somebody watches for fire. */
export const watch = verb({
  word: 'watch',
  roles: ['check', 'sheet'],
  minutes: [30, 60],
  form: { what: first(selection(['hot-work'], true), 'what'), time: forTime },
  meaning: 'Somebody watches, with an extinguisher, while and after a torch is used.',
  example: 'watch hot-work for 60 min',
  perform: (values, act) => markAll(act, act.targets(values.what)),
  say: (values, speech) => ({
    sentence: `Watch ${speech.parts(values.what)}, extinguisher at hand`,
    aside: tail(speech, 'for', values.time),
  }),
});
