import { spaces } from '../../circuit/spaces';
import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { heldIn } from '../acts';
import { outdoors } from '../slots';
import { verb } from '../verb';

/** Lets nitrogen down to the atmosphere. */
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
    'Lets nitrogen down, slowly; with no parts named, from every section that it stands in, also behind shut valves.',
  example: 'release nitrogen outdoors',
  perform(values, act) {
    const named = act.parts(values.what);
    const level = act.quantity(values.to)?.low ?? act.plan.site.atmosphere;
    const now = act.draft.now();
    const under = spaces(now).filter((space) => {
      if (named.length > 0 && !space.parts.some((index) => named.includes(index))) return false;
      const held = heldIn(act, space);
      return held.gas === 'nitrogen' && held.high > level * 1.001;
    });
    const levels = under.map((space) => heldIn(act, space).high);
    for (const space of under) {
      const held = heldIn(act, space);
      act.draft.fill(space.cells, { ...held, low: level, high: level, since: act.cause });
    }
    if (under.length === 0) act.emit({ type: 'no-effect', why: 'no nitrogen stands under pressure there' });
    act.emit({ type: 'lets-down', spaces: under, levels, outdoors: values.outdoors === true });
  },
  say: (values, speech) => ({
    sentence: `Release ${speech.parts(values.what)} slowly${values.outdoors ? ', outdoors' : ''}`,
    ...(values.to ? { aside: `to ${speech.amount(values.to)}` } : {}),
  }),
});
