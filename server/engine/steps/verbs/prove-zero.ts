import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { psi } from '../../reference/table-units';
import { heldIn } from '../acts';
import { verb } from '../verb';

/** Watches the gauges after recovery until it is sure that nothing comes back. */
export const proveZero = verb({
  word: 'prove-zero',
  roles: ['state', 'check'],
  minutes: [5, 10],
  form: { what: first(selection(['system']), 'the system or parts of it') },
  meaning: 'Waits with open gauges until it is sure that no pressure comes back: no liquid left, nothing trapped.',
  example: 'prove-zero system',
  perform(values, act) {
    for (const space of act.spaces(values.what)) {
      // Gauges that show pressure prove nothing, but that there is more to recover.
      if (heldIn(act, space).high > act.plan.site.atmosphere + psi) continue;
      for (const index of space.parts) act.draft.setPart(index, { provedZero: act.cause });
    }
  },
  say: (values, speech) => ({
    sentence: `Wait with open gauges at ${speech.parts(values.what)}: no pressure may come back`,
  }),
});
