import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { follow } from '../flow';
import { atAndFor, atPressure, forTime, into, outdoors, withGas } from '../slots';
import { verb } from '../verb';

/** Drives solvent out with nitrogen. A strong and long enough purge takes the last of it. */
export const purge = verb({
  word: 'purge',
  roles: ['state', 'figure', 'check'],
  minutes: [1, 4],
  form: {
    what: first(selection(), 'lines'),
    gas: withGas,
    level: atPressure,
    time: forTime,
    into,
    outdoors,
    from: clause('from', choice('near end', 'far end'), 'the end that it is let in at'),
  },
  meaning:
    'Drives solvent out of each line with nitrogen, one line at a time. At the common 100 psig and ten volume changes, or for half an hour, it leaves the line dry.',
  example: 'purge each kept line at 100 psig for 60 s into container',
  perform(values, act) {
    const lines = act.parts(values.what);
    if (lines.length === 0) act.emit({ type: 'no-effect', why: 'the circuit has no such line', grave: true });
    for (const index of lines) {
      const line = act.draft.graph.parts[index]!;
      const flow = follow(act, {
        medium: 'nitrogen',
        purpose: 'purge',
        line,
        from: values.from ?? 'near end',
        level: act.quantity(values.level),
        time: act.quantity(values.time),
        container: values.into !== undefined,
        outdoors: values.outdoors === true,
        gas: values.gas,
        per: typeof act.step.values['per'] === 'string',
      });
      act.emit(flow);
      for (const each of new Set(flow.outlets.flatMap((outlet) => outlet.chain))) {
        const state = act.draft.part(each);
        if (!state.wet) continue;
        act.draft.setPart(each, flow.dries ? { wet: null, unpurged: null, finalPurge: act.cause } : { unpurged: null });
      }
    }
  },
  say: (values, speech) => ({
    sentence: `Purge with ${values.gas ?? 'nitrogen'}${speech.inTurn()}: ${speech.parts(values.what)}${values.into ? `, into ${values.into.text}` : ''}${values.outdoors ? ', outdoors' : ''}`,
    aside: atAndFor(speech, values.level, values.time),
  }),
});
