import { isCylinder } from '../../plan/cylinders';
import { selection } from '../../plan/selection';
import { text } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { mark, markAll } from '../acts';
import { verb } from '../verb';

/** Puts the plates and labels on. */
export const labelSystem = verb({
  word: 'label',
  roles: ['check', 'sheet'],
  minutes: [5, 10],
  form: {
    what: first(selection(['system', 'cylinder']), '"system", a circuit, or a cylinder by its name'),
    on: clause('on', text(), 'a plate of its own'),
  },
  meaning:
    'Puts the new labels on: refrigerant, charge, oil, date; on a recovery cylinder, by its name or as "cylinder", what is in it.',
  example: 'label system',
  perform(values, act) {
    const targets = act.targets(values.what);
    const onCylinder = targets.filter(({ thing }) => thing !== null && isCylinder(act.plan, thing));
    const others = targets.filter((target) => !onCylinder.includes(target));
    if (onCylinder.length > 0) mark(act, 'label cylinder');
    if (others.length > 0 || onCylinder.length === 0) markAll(act, others);
  },
  say: (values, speech) => ({
    sentence: `Label ${speech.parts(values.what)}: refrigerant, charge, oil, date${values.on ? ` (${values.on})` : ''}`,
  }),
});
