import { quantity } from '../plan/amounts';
import { choice, list, name, thing } from '../plan/terms';
import { clause, first, flag, needed, word } from '../plan/vocabulary';

/** Words of house rules. */
export const houseRuleWords = [
  word({
    word: 'every',
    places: ['house-rules'],
    form: {
      subject: first(thing('SUBJECT'), 'what the rule is about'),
      needs: clause('needs', list(thing('THING')), 'what must be there'),
      least: clause('at least', quantity('pressure', 'time'), 'the least'),
      most: clause('at most', quantity('pressure', 'time', 'pressure-difference'), 'the most'),
      unless: flag('unless per', "silent where the maker's sheet is cited"),
      severity: clause('as', choice('error', 'warning', 'information'), 'how grave a breach is'),
    },
    meaning: 'Asks something of every joint, step or job of a kind.',
    example: 'every burnout needs suction-drier as error',
    roles: ['check'],
  }),
  word({
    word: 'recovery-cylinder',
    places: ['house-rules'],
    form: { fill: needed(clause('fill at most', quantity('share'), 'share of the water capacity by volume')) },
    meaning: 'How full a recovery cylinder may be.',
    example: 'recovery-cylinder fill at most 75 %',
    roles: ['figure', 'check'],
  }),
  word({
    word: 'oil',
    places: ['house-rules'],
    form: {
      oil: first(name('oil'), 'the old oil'),
      most: needed(clause('left at most', quantity('share'), 'share of the new charge')),
    },
    meaning: 'How much of an old oil may be left.',
    example: 'oil mineral left at most 5 %',
    roles: ['figure', 'check'],
  }),
];
