import { quantity } from '../plan/amounts';
import { choice, name, rounds, text } from '../plan/terms';
import { clause, first, flag, maybe, needed, word } from '../plan/vocabulary';

/** Words that stand in a step's block: who, limits, readings, what to do if it fails. */
export const blockWords = [
  word({
    word: 'by',
    places: ['step'],
    once: true,
    form: { who: first(choice('lead', 'fitter', 'helper', 'electrician'), 'who') },
    meaning: 'Who does the step.',
    example: 'by lead',
    roles: ['sheet'],
  }),
  word({
    word: 'caution',
    places: ['step', 'steps'],
    form: { text: first(text(), 'the warning') },
    meaning: 'A warning of the author, printed before the step.',
    example: 'caution "Roof edge"',
    roles: ['sheet'],
  }),
  word({
    word: 'expect',
    places: ['step'],
    roles: ['figure', 'check'],
    form: {
      what: first(name('stock'), 'a material or a figure'),
      amount: first(quantity('volume', 'mass', 'time', 'pressure', 'power', 'share', 'length'), 'the stated figure'),
      within: clause('within', quantity('share'), 'tolerance'),
    },
    meaning:
      'A figure that the author states; it is held against the computed one. For a list it is the list as a whole, per round.',
    example: 'expect solvent 54 fl-oz, within 10 %',
  }),
  word({
    word: 'read',
    places: ['step'],
    roles: ['check', 'sheet'],
    form: {
      name: first(name('label'), 'what is read'),
      at: clause('at', name('part'), 'where'),
      most: clause(
        'at most',
        quantity('pressure', 'temperature', 'temperature-difference', 'pressure-difference', 'length', 'acid-number'),
        'the limit',
      ),
      least: clause(
        'at least',
        quantity('pressure', 'temperature', 'temperature-difference', 'pressure-difference', 'length', 'acid-number'),
        'the limit',
      ),
    },
    meaning: 'A reading that the step asks for: a blank on the sheet.',
    example: 'read wall at cut-out',
  }),
  word({
    word: 'if-fails',
    places: ['step', 'steps'],
    roles: ['check', 'figure', 'sheet'],
    form: {
      label: needed(clause('back to', name('label'), 'a labelled step before this one')),
      most: clause('at most', rounds(), 'how often'),
      times: flag('times', 'rounds'),
      afterwards: maybe(text(), 'what then'),
    },
    meaning: 'Where the crew goes back to if the step fails, after letting down what it put in.',
    example: 'if-fails back to evacuate, at most 3 times',
  }),
];
