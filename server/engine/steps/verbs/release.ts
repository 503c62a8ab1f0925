import { spaces } from '../../circuit/spaces';
import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { heldIn, isUnderNitrogen } from '../acts';
import { byHose } from '../ports';
import { outdoors } from '../slots';
import { verb } from '../verb';

/** Lets nitrogen down to the atmosphere, or what refrigerant the named parts hold. */
export const release = verb({
  word: 'release',
  roles: ['state', 'check'],
  minutes: [5, 15],
  form: {
    what: first(selection(['nitrogen']), '"nitrogen", or the parts that it is let out of'),
    to: clause('to', quantity('pressure'), 'what is left in'),
    outdoors,
  },
  meaning:
    'Lets nitrogen down, slowly; with no parts named, from every section that it stands in, also behind shut valves. Out of parts that are named it lets carbon dioxide, too, which no machine recovers; of any other refrigerant the checks tell.',
  example: 'release nitrogen outdoors',
  perform(values, act) {
    const named = act.parts(values.what);
    const level = act.quantity(values.to)?.low ?? act.plan.site.atmosphere;
    const now = act.draft.now();
    const pressed = spaces(now).filter(
      (space) =>
        (named.length === 0 || space.parts.some((index) => named.includes(index))) &&
        heldIn(act, space).high > level * 1.001,
    );
    const under = pressed.filter((space) => heldIn(act, space).gas === 'nitrogen');
    const levels = under.map((space) => heldIn(act, space).high);
    // Refrigerant goes only out of parts that are named for it.
    const charged = named.length > 0 ? pressed.filter((space) => heldIn(act, space).gas === 'refrigerant') : [];
    const whole = act.targets(values.what).some((target) => target.selector.noun === 'system');
    const { reached: vented, missed } = byHose(now.graph, charged, whole);
    if (charged.length > 0) {
      const held = vented.map((space) => heldIn(act, space));
      act.emit({ type: 'vents', named, spaces: vented, held, outdoors: values.outdoors === true, missed });
    }
    for (const space of [...under, ...vented]) {
      const held = heldIn(act, space);
      act.draft.fill(space.cells, { ...held, liquid: false, low: level, high: level, since: act.cause });
    }
    if (under.length === 0 && charged.length > 0) return;
    if (under.length === 0) {
      // Nitrogen that is not let down stays under pressure, whoever reads the step.
      const held = spaces(now).filter((space) => isUnderNitrogen(act, space));
      act.emit({
        type: 'no-effect',
        why: held.length > 0 ? 'the nitrogen stands no higher than that' : 'no nitrogen stands under pressure there',
        // Let down once more to the same level, it is where it should be; to a higher one, the figure is wrong.
        ...(held.some((space) => heldIn(act, space).high < level * 0.99) && values.to && { grave: true }),
      });
    }
    act.emit({ type: 'lets-down', spaces: under, levels, outdoors: values.outdoors === true });
  },
  say: (values, speech) => ({
    sentence: `Release ${speech.parts(values.what)} slowly${values.outdoors ? ', outdoors' : ''}`,
    ...(values.to ? { aside: `to ${speech.amount(values.to)}` } : {}),
  }),
});
