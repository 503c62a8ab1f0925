import type { Plant } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { has, leaves } from '../course';
import { defineCheck, type Whole } from '../define';
import { standsNow, touched } from '../plant';
import { insertAfter, moveBefore } from '../ways-out';

/** A sealed machine whose stub is brazed on for the job. */
const sealed = [
  ['    condenser kept {', '    stub: process-tube added\n    condenser kept {'],
  [
    'install liquid-drier with nitrogen at 5 cfh',
    'install stub with nitrogen at 5 cfh\n    install liquid-drier with nitrogen at 5 cfh',
  ],
] as const;

/** The stub of a sealed machine that nobody pinches off, or that is pinched off before the charge is in. */
export const processTubeUnsealed = defineCheck({
  name: 'process-tube-unsealed',
  severity: 'warning',
  title: 'A process tube is not sealed, or it is sealed before the work through it is done',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open'],
  meaning:
    'A process tube that the job puts on is never pinched off, capped or plugged. Or it is pinched off while the machine has still to be tested, evacuated or charged, and no other port is left to do that by.',
  why: 'Under a clamp or a valve core the stub leaks within months, and in a small machine that is the whole charge. Through a stub that is shut nothing goes in.',
  source: 'common practice, no source',
  wrong: {
    base: 'rack',
    instead: [[sealed[0][0], sealed[0][1].replace('added\n', 'added # <- here\n')], sealed[1]],
  },
  right: {
    base: 'rack',
    instead: [...sealed, ['label system', 'pinch-off stub\n    leak-check system\n    label system']],
  },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    const { graph } = whole.plan;
    for (const part of graph.parts) {
      if (part.kind.kind !== 'process-tube' || !touched(graph, part.index)) continue;
      const set = last.after.parts[part.index]!.setBy;
      if (set === null || !standsNow(last.after, part.index)) continue;
      const pinched = whole.entries.findIndex((entry) =>
        leaves(entry, new RegExp(`^pinch-off (${part.name}|process-tube)$`)),
      );
      if (pinched < 0) {
        if (part.ends.some((end) => last.after.ends[end]!.closure !== null)) continue;
        whole.reportPart(part.index, {
          message: (say) =>
            `${part.name}, put on by ${say.step(set)}, is never pinched off: pinch it and seal its end when the machine has run well.`,
          concerns: [part.index],
          related: [{ cause: set, message: 'it is put on here' }],
          fixes: seal(whole, part.name),
        });
      } else early(whole, whole.entries[pinched]!, part.index);
    }
  },
});

/** Pinched off, and after it the machine is filled, evacuated or tested with no other port in place. */
function early(whole: Whole, pinch: Entry, tube: number): void {
  const at = whole.entries.indexOf(pinch);
  const later = whole.entries
    .slice(at + 1)
    .filter((entry) => isThroughPort(entry) && !hasOtherPort(entry.before, tube));
  if (later.length === 0) return;
  whole.report(pinch, {
    message: (say) =>
      `With the stub pinched off here nothing gets in or out, and ${say.step(later[0]!.cause)} comes after it: pinch it off when that is done.`,
    slot: 'what',
    concerns: [tube],
    related: [{ cause: later[0]!.cause, message: 'this goes through a port' }],
    fixes: [moveBefore('Do that before the tube is pinched off', later[0]!.slot.step, pinch.slot.step)],
  });
}

const isThroughPort = (entry: Entry): boolean =>
  entry.events.some((event) => event.type === 'charges' && event.spaces.length > 0) ||
  has(entry, 'evacuates') ||
  has(entry, 'recovers');

/** An access valve, a clamp, another stub or a part's own valve: a hose goes on there. A machine with a stub has no ports at coil and shell. */
const hasOtherPort = (plant: Plant, tube: number): boolean =>
  plant.graph.parts.some(
    ({ index, kind, ends }) =>
      index !== tube &&
      touched(plant.graph, index) &&
      standsNow(plant, index) &&
      ((kind.port && kind.group !== 'coil' && kind.group !== 'unit' && kind.kind !== 'compressor') ||
        ends.some((end) => plant.graph.ends[end]!.valve)),
  );

/** After the last step that trims or weighs the charge, or starts the machine. */
function seal(whole: Whole, name: string): readonly ReturnType<typeof insertAfter>[] {
  const last = [...whole.entries]
    .reverse()
    .find((entry) => entry.events.some(({ type }) => type === 'charges' || type === 'adjusts' || type === 'starts'));
  return last ? [insertAfter(`Afterwards: pinch-off ${name}`, last.slot.step, `pinch-off ${name}`)] : [];
}
