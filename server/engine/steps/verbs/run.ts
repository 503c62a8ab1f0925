import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { mark } from '../acts';
import { machines } from '../machines';
import { forTime, tail } from '../slots';
import { verb } from '../verb';

/** Lets a machine run for a while, so that oil mixes or readings settle. */
export const run = verb({
  word: 'run',
  roles: ['state', 'check'],
  minutes: [2, 5],
  form: { what: first(selection(['system']), 'the system or one machine'), time: forTime },
  meaning: 'Lets a machine run for a while, so that oil mixes or readings settle.',
  example: 'run comp-a for 24 h',
  perform(values, act) {
    act.emit({ type: 'starts', mode: null, parts: machines(act, values.what) });
    const lockedOut = new Map(act.draft.now().lockedOut);
    // A lock on one machine stays when the rest runs.
    for (const target of act.targets(values.what))
      if (target.selector.noun !== 'system') for (const index of target.parts) lockedOut.delete(index);
    act.draft.set({ running: true, lockedOut });
    // Behind a shut valve it draws in what stands as liquid between there and its inlet.
    const { graph } = act.draft;
    if (graph.parts.some(({ kind, index }) => kind.shuts === 'hand' && act.draft.part(index).position === 'shut'))
      mark(act, 'draw-in');
  },
  say: (values, speech) => ({ sentence: `Run ${speech.parts(values.what)}`, aside: tail(speech, 'for', values.time) }),
});
