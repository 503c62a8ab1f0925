import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { choice, either, name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { heldIn, mark } from '../acts';
import { verb } from '../verb';

/** Trims the charge or a valve while the system runs steadily. */
export const adjust = verb({
  word: 'adjust',
  roles: ['figure', 'check'],
  minutes: [15, 45],
  form: {
    what: first(selection(['charge', 'superheat'], true), '"charge", or "superheat of" valves'),
    with: clause('with', name('refrigerant'), 'refrigerant'),
    to: clause(
      'to',
      either(quantity('temperature-difference'), choice('sight-glass clear', 'level', 'weight')),
      'the target',
    ),
    after: clause('after', quantity('time'), 'steady running before the reading'),
    most: clause('at most', quantity('mass'), 'the charge in all'),
  },
  meaning: 'Trims the charge, or the superheat of valves, to its target while the system runs steadily.',
  example: 'adjust charge after 15 min',
  perform(values, act) {
    const refrigerant = values.with?.text ?? act.plan.system.refrigerant.after ?? '';
    const spaces = act.spaces(undefined);
    const ofCharge = values.what?.some((selector) => selector.noun === 'charge') ?? false;
    act.emit({
      type: 'adjusts',
      what: ofCharge ? 'charge' : 'superheat',
      parts: act.parts(values.what),
      to: typeof values.to === 'object' ? act.quantity(values.to) : (values.to ?? null),
      after: act.quantity(values.after),
    });
    mark(act, ofCharge ? 'adjust charge' : 'adjust superheat');
    if (ofCharge)
      act.emit({
        type: 'charges',
        refrigerant,
        mass: act.quantity(values.most),
        spaces,
        held: spaces.map((space) => heldIn(act, space)),
        phase: null,
        purpose: 'adjust',
      });
  },
  say: (values, speech) => ({
    sentence: `Adjust ${speech.parts(values.what)}${values.to ? ` to ${typeof values.to === 'string' ? values.to : speech.amount(values.to)}` : ''}`,
    aside: [
      values.after ? `after ${speech.amount(values.after)} steady` : '',
      values.most ? `at most ${speech.amount(values.most)} in all` : '',
    ]
      .filter(Boolean)
      .join(', '),
  }),
});
