import { filled } from '../../circuit/state';
import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { choice, name, pair } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { heldIn } from '../acts';
import { verb } from '../verb';

/** Weighs refrigerant in. */
export const charge = verb({
  word: 'charge',
  roles: ['state', 'figure', 'check'],
  minutes: [10, 40],
  form: {
    what: first(selection(['system']), 'the system or a circuit'),
    with: clause('with', pair(name('refrigerant'), quantity('mass')), 'refrigerant and mass'),
    phase: clause('as', choice('liquid', 'vapour'), 'how it goes in'),
  },
  meaning:
    'Weighs refrigerant in: into the vacuum of a conversion, or what the lines ask over the charge that a new unit brought.',
  example: 'charge system with R-448A 81 lb as liquid',
  perform(values, act) {
    const refrigerant = values.with?.a.text ?? act.plan.system.refrigerant.after;
    if (refrigerant === null) return;
    const spaces = act.spaces(values.what);
    const held = spaces.map((space) => heldIn(act, space));
    act.emit({
      type: 'charges',
      refrigerant,
      mass: act.quantity(values.with?.b),
      spaces,
      held,
      phase: values.phase ?? null,
      purpose: 'charge',
    });
    const pressure = act.plan.startPressure(refrigerant);
    if (!pressure) return;
    for (const space of spaces) {
      if (space.openings.length > 0) continue;
      const mixed = heldIn(act, space);
      const other = mixed.gas === 'refrigerant' && mixed.refrigerant !== refrigerant ? mixed.refrigerant : null;
      act.draft.fill(
        space.cells,
        filled(
          other ? `${other} and ${refrigerant}` : refrigerant,
          pressure,
          mixed.refrigerant === refrigerant && mixed.liquid ? mixed.since : act.cause,
        ),
      );
    }
  },
  say: (values, speech) => ({
    sentence: `Charge ${speech.parts(values.what)}${values.with ? ` with ${values.with.a.text}` : ''}${values.phase ? ` as ${values.phase}` : ''}`,
    ...(values.with?.b ? { aside: speech.amount(values.with.b) } : {}),
  }),
});
