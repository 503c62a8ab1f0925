import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** Puts an alarm, a switch or an instrument out of action; it must be put back. */
export const bypass = verb({
  word: 'bypass',
  roles: ['state', 'check'],
  minutes: [2, 10],
  form: {
    what: first(
      selection(['transducers', 'relief-valves', 'low-pressure-switch', 'door-alarms'], true),
      'alarms, switches, instruments',
    ),
  },
  meaning: 'Puts an alarm, a switch or an instrument out of action, or isolates it; restore puts it back.',
  example: 'bypass transducers, relief-valves',
  perform(values, act) {
    const bypassed = new Map(act.draft.now().bypassed);
    for (const target of act.targets(values.what))
      for (const name of target.thing !== null
        ? [target.thing]
        : target.parts.map((index) => act.draft.graph.parts[index]!.name))
        bypassed.set(name, act.cause);
    act.draft.set({ bypassed });
  },
  say: (values, speech) => ({ sentence: `Put out of action and tag: ${speech.parts(values.what)}` }),
});
