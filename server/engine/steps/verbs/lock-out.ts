import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** Power off and locked, for everything or for one machine. */
export const lockOut = verb({
  word: 'lock-out',
  roles: ['state', 'check'],
  minutes: [3, 10],
  form: { what: first(selection(['power']), '"power", or one machine') },
  meaning:
    'Switches off, locks and tags, and proves that no voltage is left. Solenoids and regulators under control fall shut.',
  example: 'lock-out power',
  perform(values, act) {
    const targets = act.targets(values.what);
    if (targets.some((target) => target.thing === 'power')) {
      const { running, resumes } = act.draft.now();
      act.draft.set({ power: 'locked-out', running: false, resumes: running || resumes, powerBy: act.cause });
      act.emit({ type: 'powers', to: 'locked-out' });
    }
    const parts = targets.flatMap((target) => target.parts);
    if (parts.length === 0) return;
    const lockedOut = new Map(act.draft.now().lockedOut);
    for (const index of parts) lockedOut.set(index, act.cause);
    act.draft.set({ lockedOut });
  },
  say: (values, speech) => ({
    sentence: `Lock out and tag ${speech.parts(values.what)}; prove that no voltage is left`,
  }),
});
