import type { Shutting } from '../../circuit/kinds';
import type { Power } from '../../circuit/state';
import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { isWaterValve, nameList, ownValveEnds, unitValveEnds, waterValves } from '../valves';
import { verb } from '../verb';

/** A motor or a coil opens nothing while the power is locked out; a regulator shuts with the machine unless its stem holds it. */
const needsHolding = (shuts: Shutting | undefined, power: Power): boolean =>
  shuts === 'control' || (power === 'locked-out' && (shuts === 'driven' || shuts === 'power'));

/** Opens valves: of the circuit, of a part, of a new unit (which lets its charge in). */
export const open = verb({
  word: 'open',
  roles: ['state', 'check'],
  minutes: [1, 5],
  form: {
    what: first(
      selection(['service-valves', 'expansion-valves', 'valves', ...waterValves]),
      'valves, or "valves of" a part',
    ),
    by: clause('by', choice('magnet', 'stem', 'hand', 'service-tool'), 'what holds it open'),
  },
  meaning:
    'Opens valves. A solenoid by magnet and a regulator by stem stay open until they are returned to control; "service-valves" lets a new unit\'s charge in.',
  example: 'open sol-1, sol-2 by magnet',
  perform(values, act) {
    let done = 0;
    const dead: number[] = [];
    const off: number[] = [];
    for (const target of act.targets(values.what)) {
      const { noun } = target.selector;
      if (target.thing !== null && isWaterValve(target.thing)) {
        const bypassed = new Map(act.draft.now().bypassed);
        if (bypassed.delete(target.thing)) done++;
        act.draft.set({ bypassed });
      }
      if (noun === 'valves') {
        off.push(...target.parts.filter((index) => act.draft.part(index).mounted === 'none'));
        for (const end of ownValveEnds(act, target.parts)) {
          if (act.draft.end(end).valve === 'shut') done++;
          act.draft.setEnd(end, { valve: 'open' });
        }
        continue;
      }
      const unitEnds =
        noun === 'service-valves' ? unitValveEnds(act).filter((end) => act.draft.end(end).valve === 'shut') : [];
      for (const end of unitEnds) act.draft.setEnd(end, { valve: 'open' });
      if (unitEnds.length > 0) {
        done++;
        act.emit({
          type: 'lets-in',
          ends: unitEnds,
          parts: [...new Set(unitEnds.map((end) => act.draft.graph.ends[end]!.part))],
        });
      }
      for (const index of target.parts) {
        const part = act.draft.graph.parts[index]!;
        const state = act.draft.part(index);
        if (state.mounted === 'none') {
          off.push(index);
          continue;
        }
        if (values.by === undefined && needsHolding(part.kind.shuts, act.draft.now().power)) {
          dead.push(index);
          continue;
        }
        if (part.kind.shuts) {
          if (state.position !== 'open' || state.heldBy !== (values.by ?? null)) done++;
          const { ends, joints } = act.draft.graph;
          const met = part.ends.flatMap((end) => joints[ends[end]!.joint]?.ends ?? []);
          if (
            state.position === 'shut' &&
            met.some((end) => act.draft.part(ends[end]!.part).ownCharge && act.draft.end(end).valve !== 'shut')
          ) {
            act.emit({ type: 'lets-in', ends: part.ends, parts: [index] }); // a stop valve of a unit, spelled out
          }
          act.draft.setPart(index, { position: 'open', heldBy: values.by ?? null });
        } else if (part.kind.group === 'metering')
          done++; // A thermostatic valve has nothing to open by hand: it passes.
        else {
          const own = ownValveEnds(act, [index]);
          done += own.filter((end) => act.draft.end(end).valve === 'shut').length;
          for (const end of own) act.draft.setEnd(end, { valve: 'open' });
        }
      }
    }
    if (dead.length > 0) act.emit({ type: 'lacks-power', parts: dead });
    else if (done === 0 && off.length > 0)
      act.emit({ type: 'no-effect', why: `${nameList(act, off)} not in place`, grave: true, parts: off });
    else if (done === 0) act.emit({ type: 'no-effect', why: 'what it opens stands open already' });
  },
  say: (values, speech) => ({ sentence: `Open ${speech.parts(values.what)}${values.by ? ` by ${values.by}` : ''}` }),
});
