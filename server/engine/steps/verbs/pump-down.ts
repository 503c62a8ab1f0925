import { selection } from '../../plan/selection';
import { name } from '../../plan/terms';
import { clause, maybe } from '../../plan/vocabulary';
import { mark } from '../acts';
import { tail, toPressure } from '../slots';
import { verb } from '../verb';

/** Lets the compressor draw the charge into condenser and receiver. */
export const pumpDown = verb({
  word: 'pump-down',
  roles: ['state', 'figure', 'check'],
  minutes: [10, 30],
  form: {
    what: maybe(selection(['system']), 'the system'),
    into: clause('into', name('part'), 'the receiver or condenser that holds it'),
    level: toPressure,
  },
  meaning:
    'Lets the compressor draw the charge into condenser or receiver. What is behind the shut valve is low then, not empty: it is still recovered.',
  example: 'pump-down system into receiver to 0 psig',
  perform(_values, act) {
    if (!act.draft.now().running) act.emit({ type: 'no-effect', why: 'the compressor does not run' });
    act.emit({ type: 'pumps-down' });
    mark(act, 'pump-down');
  },
  say: (values, speech) => ({
    sentence: `Pump down${values.into ? ` into ${values.into.text}` : ''}`,
    aside: tail(speech, 'to', values.level),
  }),
});
