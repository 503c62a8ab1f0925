import { selection } from '../../plan/selection';
import { list, thing } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** What keeps a line from being used again, or says how it has to be cleaned. */
const faults = ['low-spots', 'traps', 'kinks', 'wall', 'corrosion', 'moisture'];

/** Looks a line over before it is used again. */
export const inspect = verb({
  word: 'inspect',
  roles: ['state', 'check'],
  minutes: [5, 15],
  form: { what: first(selection(), 'lines'), for: clause('for', list(thing('WHAT', faults)), 'what to look for') },
  meaning: 'Looks the parts over before they are used again; a line is not flushed unseen.',
  example: 'inspect each kept line for low-spots, traps, kinks, wall',
  perform(values, act) {
    for (const index of act.parts(values.what)) act.draft.setPart(index, { inspected: act.cause });
  },
  say: (values, speech) => ({
    sentence: `Inspect ${speech.parts(values.what)}${values.for ? ` for ${values.for.join(', ')}` : ''}`,
  }),
});
