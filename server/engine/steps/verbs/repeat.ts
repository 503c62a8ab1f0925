import { quantity } from '../../plan/amounts';
import { name, rounds } from '../../plan/terms';
import { clause, flag } from '../../plan/vocabulary';
import { verb } from '../verb';

/** A block that the work goes through more than once; its quantities become a range from the least to the most rounds. */
export const repeat = verb({
  word: 'repeat',
  roles: ['state', 'figure', 'sheet'],
  minutes: [0, 0],
  blockOf: 'steps',
  blockNeeded: true,
  form: {
    clear: flag('until clear', 'until a cloth at the outlet stays clean'),
    oil: clause('until', name('oil'), 'an old oil …'),
    share: clause('at most', quantity('share'), '… down to this share'),
    least: clause('at least', rounds(), 'rounds at the least'),
    most: clause('at most', rounds(), 'rounds at the most'),
  },
  meaning:
    'A block that the work goes through more than once. Quantities are given from the least to the most rounds; stock is held against the most.',
  example: 'repeat until clear, at least 2, at most 4 { … }',
  say: (values) => ({
    sentence: `Repeat${values.clear ? ' until clear' : values.oil && values.share ? ` until ${values.oil.text} is at most ${values.share.literal.text}` : ''}`,
    aside: [values.least ? `at least ${values.least}` : '', values.most ? `at most ${values.most} rounds` : '']
      .filter(Boolean)
      .join(', '),
  }),
});
