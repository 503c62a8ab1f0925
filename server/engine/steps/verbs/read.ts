import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { choice, name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { markAll, part } from '../acts';
import { type Act, verb } from '../verb';

/** Takes a reading. */
export const readStep = verb({
  word: 'read',
  roles: ['check', 'sheet'],
  minutes: [2, 10],
  form: {
    what: first(
      selection(['pressures', 'superheat', 'subcooling', 'amps', 'temperature-split', 'pressure-drop'], true),
      'what',
    ),
    on: clause('on', name('part'), 'which machine'),
    zone: clause('per', choice('zone'), 'for each zone'),
    most: clause(
      'at most',
      quantity('pressure-difference', 'temperature-difference', 'pressure', 'temperature'),
      'the limit',
    ),
    least: clause(
      'at least',
      quantity('pressure-difference', 'temperature-difference', 'pressure', 'temperature'),
      'the limit',
    ),
    after: clause('after', quantity('time'), 'how long it has run'),
  },
  meaning: 'Takes readings, against a limit where one is stated.',
  example: 'read pressure-drop of suction-drier, at most 4 psi',
  perform(values, act) {
    markAll(act, act.targets(values.what));
    // While the machine stands there is nothing to read anywhere.
    const off = act.draft.now().running ? act.parts(values.what).filter((index) => isOff(act, index)) : [];
    for (const index of off)
      act.emit({ type: 'no-effect', why: `${part(act, index).name} is not in place`, grave: true, parts: [index] });
    act.emit({ type: 'reads', of: values.what?.map((selector) => selector.noun) ?? [] });
  },
  say: (values, speech) => ({
    sentence: `Read ${speech.parts(values.what)}${values.on ? ` on ${values.on.text}` : ''}${values.zone ? ' for each zone' : ''}`,
    aside: [
      values.most ? `at most ${speech.amount(values.most)}` : '',
      values.least ? `at least ${speech.amount(values.least)}` : '',
      values.after ? `after ${speech.amount(values.after)}` : '',
    ]
      .filter(Boolean)
      .join(', '),
  }),
});

const isOff = (act: Act, index: number): boolean => act.draft.part(index).mounted === 'none';
