import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { choice, name } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { follow, wet } from '../flow';
import { atAndFor, forTime, into, outdoors } from '../slots';
import { verb } from '../verb';

/** Sends solvent through each line. */
export const flush = verb({
  word: 'flush',
  roles: ['state', 'figure', 'check'],
  minutes: [3, 8],
  form: {
    what: first(selection(), 'lines'),
    with: clause('with', name('solvent'), "a solvent; the plan's if nothing is said"),
    level: clause('at', quantity('pressure'), 'nitrogen behind the solvent'),
    time: forTime,
    into,
    outdoors,
    from: clause('from', choice('near end', 'far end'), 'the end that it goes in at'),
  },
  meaning:
    'Sends a shot of solvent through each line, one line at a time, never in series. Whatever it reaches is wet until the final purge.',
  example: 'flush each kept line into container',
  perform(values, act) {
    const lines = act.parts(values.what);
    if (lines.length === 0) act.emit({ type: 'no-effect', why: 'the circuit has no such line', grave: true });
    for (const index of lines) {
      const line = act.draft.graph.parts[index]!;
      const flow = follow(act, {
        medium: 'solvent',
        purpose: 'flush',
        line,
        from: values.from ?? 'near end',
        level: act.quantity(values.level),
        time: act.quantity(values.time),
        container: values.into !== undefined,
        outdoors: values.outdoors === true,
        per: false,
      });
      act.emit(flow);
      wet(act, flow);
    }
  },
  say: (values, speech) => ({
    sentence: `Flush with ${values.with?.text ?? 'solvent'}${speech.inTurn()}: ${speech.parts(values.what)}${values.into ? `, into ${values.into.text}` : ''}${values.outdoors ? ', outdoors' : ''}`,
    aside: atAndFor(speech, values.level, values.time),
  }),
});
