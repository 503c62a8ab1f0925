import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { mark } from '../acts';
import { isWaterValve, nameList, oldUnitStands, ownValveEnds, unitValveEnds, waterValves } from '../valves';
import { verb } from '../verb';

/** Shuts valves; what stands between two shut ones is a section of its own from then on. */
export const closeValves = verb({
  word: 'close',
  roles: ['state', 'check'],
  minutes: [1, 5],
  form: { what: first(selection(['service-valves', 'valves', ...waterValves]), 'valves, or "valves of" a part') },
  meaning:
    'Shuts valves. What lies between two shut valves is recovered, tested and evacuated on its own or not at all. Water valves must be opened again.',
  example: 'close valve-bs, valve-bd',
  perform(values, act) {
    let done = 0;
    const off: number[] = [];
    for (const target of act.targets(values.what)) {
      if (target.thing !== null && isWaterValve(target.thing)) {
        done++;
        act.draft.set({ bypassed: new Map([...act.draft.now().bypassed, [target.thing, act.cause]]) });
      }
      if (target.selector.noun === 'service-valves') {
        if (oldUnitStands(act)) {
          done++;
          mark(act, 'close service-valves');
        }
        for (const end of unitValveEnds(act)) {
          if (act.draft.end(end).valve === 'open') done++;
          act.draft.setEnd(end, { valve: 'shut' });
        }
      }
      for (const index of target.parts) {
        const part = act.draft.graph.parts[index]!;
        if (act.draft.part(index).mounted === 'none') off.push(index);
        const own = target.selector.noun === 'valves' || !part.kind.shuts ? ownValveEnds(act, [index]) : [];
        for (const end of own) {
          if (act.draft.end(end).valve === 'open') done++;
          act.draft.setEnd(end, { valve: 'shut' });
        }
        if (part.kind.shuts && target.selector.noun !== 'valves' && act.draft.part(index).mounted !== 'none') {
          if (act.draft.part(index).position !== 'shut') done++;
          act.draft.setPart(index, { position: 'shut', heldBy: null });
        }
      }
    }
    if (off.length > 0)
      act.emit({
        type: 'no-effect',
        why: `${nameList(act, off)} not in place yet, and nothing is shut there`,
        grave: true,
        parts: off,
      });
    else if (done === 0) act.emit({ type: 'no-effect', why: 'what it closes stands shut already' });
  },
  say: (values, speech) => ({ sentence: `Close ${speech.parts(values.what)}` }),
});
