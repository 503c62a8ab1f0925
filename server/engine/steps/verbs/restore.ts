import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** Puts power, or what a bypass put out of action, back. */
export const restore = verb({
  word: 'restore',
  roles: ['state', 'check'],
  minutes: [2, 10],
  form: { what: first(selection(['power', 'controls'], true), '"power", or what was bypassed') },
  meaning:
    'Gives the power back, or puts back what a bypass put out of action. A machine that the lock-out caught running runs again; driven valves return to their control.',
  example: 'restore power',
  perform(values, act) {
    const bypassed = new Map(act.draft.now().bypassed);
    for (const target of act.targets(values.what)) {
      if (target.thing === 'power') {
        const { running, resumes, power, lockedOut } = act.draft.now();
        if (power === 'on' && lockedOut.size === 0) act.emit({ type: 'no-effect', why: 'the power is on already' });
        act.draft.set({
          power: 'on',
          running: running || resumes,
          resumes: false,
          powerBy: act.cause,
          lockedOut: new Map(),
        });
        act.emit({ type: 'powers', to: 'on' });
        act.draft.graph.parts.forEach((part, index) => {
          if (part.kind.shuts === 'driven' && act.draft.part(index).heldBy === null)
            act.draft.setPart(index, { position: 'control' });
        });
      } else {
        const names =
          target.thing !== null ? [target.thing] : target.parts.map((index) => act.draft.graph.parts[index]!.name);
        if (!names.some((name) => bypassed.has(name)) && !act.draft.now().lockedOut.size) {
          act.emit({ type: 'no-effect', why: `nothing put ${names.join(', ')} out of action before` });
        }
        for (const name of names) bypassed.delete(name);
        const lockedOut = new Map(act.draft.now().lockedOut);
        for (const index of target.parts) lockedOut.delete(index);
        act.draft.set({ lockedOut });
      }
    }
    act.draft.set({ bypassed });
  },
  say: (values, speech) => ({ sentence: `Restore ${speech.parts(values.what)}` }),
});
