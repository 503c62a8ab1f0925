import { quantity, vacuumLevel } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first, needed } from '../../plan/vocabulary';
import { heldIn } from '../acts';
import { dryVacuum } from '../gas';
import { byHose } from '../ports';
import { forTime, tail } from '../slots';
import { closedOnly, nothingLeft } from '../tests';
import { verb } from '../verb';

/** The usual level of a last evacuation, 500 micron (common practice, no source), Pa. */
const usualLevel = 66.7;

/** Pumps down to a level. */
export const evacuate = verb({
  word: 'evacuate',
  roles: ['state', 'figure', 'check'],
  minutes: [30, 120],
  form: {
    what: first(selection(['system', 'each open part']), 'parts, sections, or "each open part"'),
    level: needed(clause('to', vacuumLevel(), 'the level to reach')),
    time: forTime,
    within: clause('within', quantity('time'), 'the time that it may take'),
  },
  meaning:
    'Pumps the spaces that the parts hang in down to a level, gauge at the far end. Of several, one between shut valves without a port of its own is not reached.',
  example: 'evacuate each open part to 500 micron',
  perform(values, act) {
    const stated = act.quantity(values.level)?.low ?? null;
    // A level that cannot be read is told where it stands; what follows is judged as if it had been reached.
    if (stated === null && values.level === undefined && act.step.bound.faults.length === 0) return;
    const level = stated ?? usualLevel;
    const { spaces, open, charged } = closedOnly(act, values.what);
    const whole = act.targets(values.what).some((target) => target.selector.noun === 'system');
    // A machine that hangs together as one has a port somewhere, whatever its plan lists.
    const { reached, missed } = byHose(act.draft.graph, spaces, whole && spaces.length > 1);
    for (const space of reached) {
      const held = heldIn(act, space);
      act.draft.fill(space.cells, {
        gas: 'vacuum',
        refrigerant: level <= dryVacuum ? null : held.refrigerant,
        low: level,
        high: level,
        liquid: false,
        since: act.cause,
      });
      for (const index of space.parts) act.draft.setPart(index, { evacuated: { level, by: act.cause } });
    }
    if (stated !== null)
      act.emit({
        type: 'evacuates',
        spaces: [...reached, ...open, ...charged],
        level: stated,
        missed,
      });
    if (spaces.length + open.length + charged.length === 0)
      act.emit(nothingLeft(act, values.what, 'nothing that it reaches is left to pump down'));
  },
  say: (values, speech) => ({
    sentence: `Evacuate ${speech.parts(values.what)}`,
    aside: [tail(speech, 'to', values.level).trim(), tail(speech, 'for', values.time).trim()]
      .filter(Boolean)
      .join(', '),
  }),
});
