import { contentsOfCell } from '../../circuit/settle';
import { selection } from '../../plan/selection';
import { name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { heldIn, isUnderNitrogen } from '../acts';
import { dryVacuum, recoverable } from '../gas';
import { byHose } from '../ports';
import { tail, toPressure } from '../slots';
import { verb } from '../verb';

/** Draws refrigerant out into a cylinder, from every section that a port reaches. */
export const recover = verb({
  word: 'recover',
  roles: ['state', 'figure', 'check'],
  minutes: [20, 90],
  form: {
    what: first(selection(['system']), 'the system or parts of it'),
    level: toPressure,
    into: clause('into', name('stock'), 'a labelled cylinder'),
  },
  meaning:
    'Draws the refrigerant out into a cylinder, down to the level that the rule asks. A section between two shut valves without a port is not reached.',
  example: 'recover system to 10 inHg into old-gas',
  perform(values, act) {
    const level = act.quantity(values.level)?.low ?? act.plan.site.atmosphere;
    const whole = act.targets(values.what).some((target) => target.selector.noun === 'system');
    const wanted = act.spaces(values.what);
    const now = act.draft.now();
    const holding = wanted.filter((space) => recoverable(now, space));
    const { reached, missed } = byHose(now.graph, holding, whole);
    const held = reached.map((space) => heldIn(act, space));
    for (const space of reached) {
      for (const cell of space.cells) {
        const before = contentsOfCell(now, cell);
        const clear = level <= dryVacuum;
        act.draft.fill([cell], {
          gas: clear ? 'vacuum' : before.gas,
          refrigerant: clear ? null : before.refrigerant,
          low: level,
          high: level,
          liquid: false,
          since: act.cause,
        });
      }
    }
    if (holding.length === 0) {
      // What stands under nitrogen would go into the cylinder with it.
      const nitrogen = wanted.some((space) => isUnderNitrogen(act, space));
      act.emit({
        type: 'no-effect',
        why: `nothing that it reaches holds refrigerant${nitrogen ? ', and nitrogen does not belong into a recovery cylinder' : ''}`,
        ...(nitrogen && { grave: true }),
      });
    }
    act.emit({
      type: 'recovers',
      named: act.parts(values.what),
      spaces: reached,
      held,
      level,
      into: values.into?.text ?? null,
      missed,
    });
  },
  say: (values, speech) => ({
    sentence: `Recover ${speech.parts(values.what)}${values.into ? ` into ${values.into.text}` : ''}`,
    aside: tail(speech, 'to', values.level),
  }),
});
