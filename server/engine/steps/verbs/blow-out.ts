import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { follow } from '../flow';
import { atAndFor, atPressure, forTime, into, outdoors, withGas } from '../slots';
import { verb } from '../verb';

/** Blows loose oil and dirt out of each line with nitrogen, before any solvent. */
export const blowOut = verb({
  word: 'blow-out',
  roles: ['state', 'figure', 'check'],
  minutes: [2, 5],
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
    'Blows loose oil and dirt out of each line with nitrogen, one line at a time. Before any solvent it leaves the line dry.',
  example: 'blow-out each kept line at 50 psig for 30 s into container',
  perform(values, act) {
    const lines = act.parts(values.what);
    if (lines.length === 0) act.emit({ type: 'no-effect', why: 'the circuit has no such line', grave: true });
    for (const index of lines) {
      const line = act.draft.graph.parts[index]!;
      act.emit(
        follow(act, {
          medium: 'nitrogen',
          purpose: 'blow-out',
          line,
          from: values.from ?? 'near end',
          level: act.quantity(values.level),
          time: act.quantity(values.time),
          container: values.into !== undefined,
          outdoors: values.outdoors === true,
          gas: values.gas,
          per: false,
        }),
      );
    }
  },
  say: (values, speech) => ({
    sentence: `Blow out with ${values.gas ?? 'nitrogen'}, one line at a time: ${speech.parts(values.what)}${values.into ? `, into ${values.into.text}` : ''}${values.outdoors ? ', outdoors' : ''}`,
    aside: atAndFor(speech, values.level, values.time),
  }),
});
