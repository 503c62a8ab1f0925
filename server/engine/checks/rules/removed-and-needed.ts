import type { Part } from '../../circuit/graph';
import { neighbours } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { isCharged, isCompressor, standsNow } from '../plant';
import { setsAllNew, writeStanding } from '../ways-out';

/** A part that no machine works without is stated removed for good, and the tubes beside it are joined and charged. */
export const removedAndNeeded = defineCheck({
  name: 'removed-and-needed',
  severity: 'warning',
  title: 'A part is gone for good and the circuit runs through its place',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['part-not-as-stated', 'joint-left-open', 'circuit-incomplete'],
  meaning:
    'A compressor, a coil or a metering device is stated removed and is off when the plan ends, both of its neighbours are joined to each other over the gap and hold refrigerant, and nothing of its kind stands in that run of tube.',
  why: 'A part that a new one replaces is `new`, not `removed`. As written, liquid runs straight on to where vapour should, or nothing moves it: the list of parts, the sheet and the figures leave the new part out.',
  source: 'common practice',
  wrong: {
    base: 'split',
    instead: [['evaporator new {', 'evaporator removed { # <- here']],
  },
  right: { base: 'split' },
  plan(whole) {
    const last = whole.entries.at(-1)?.after;
    if (!last) return;
    for (const part of last.graph.parts) {
      const role = roleOf(part);
      if (role === null || part.standing !== 'removed' || standsNow(last, part.index) || part.ends.length !== 2)
        continue;
      const sides = part.ends.map((end) => neighbours(last, end));
      if (!sides.every(([only, second]) => only !== undefined && second === undefined && isFilled(last, only)))
        continue;
      if (part.ends.some((end) => runFrom(last, end).some((other) => takesPlace(other, part)))) continue;
      const names = sides.map(([end]) => last.graph.parts[last.graph.ends[end!]!.part]!.name);
      whole.reportPart(part.index, {
        message: `${part.name} is stated removed, and ${names.join(' and ')} ${isOrAre(names.length)} joined and charged over the gap with no other ${role} there: state it new where a new one takes its place, or say what stands there.`,
        concerns: [part.index],
        fixes: setsAllNew(whole.entries) ? writeStanding(whole.plan, part, 'new') : [],
      });
    }
  },
});

const roleOf = (part: Part): string | null => {
  if (isCompressor(part)) return 'compressor';
  if (part.kind.group === 'coil') return 'coil';
  return part.kind.group === 'metering' ? 'metering device' : null;
};

/** Coils that may give heat off or take it up, so that either side's may be one. */
const eitherSide: readonly string[] = ['plate-exchanger', 'coaxial-coil', 'microchannel-coil'];

/** Whether a part does what another did: any metering device for any other, a coil only for one of its side. */
function takesPlace(other: Part, part: Part): boolean {
  if (roleOf(other) !== roleOf(part)) return false;
  const kinds = [other.kind.kind, part.kind.kind];
  return part.kind.group !== 'coil' || kinds[0] === kinds[1] || kinds.some((kind) => eitherSide.includes(kind));
}

const isFilled = (plant: Plant, end: number): boolean => {
  const { part } = plant.graph.ends[end]!;
  return standsNow(plant, part) && plant.ends[end]!.attached && isCharged(plant, part);
};

/** The parts that stand in the run of tube from an end on, up to where it branches. */
function runFrom(plant: Plant, end: number): readonly Part[] {
  const found: Part[] = [];
  let met = neighbours(plant, end);
  for (let hops = plant.graph.parts.length; hops > 0 && met.length === 1; hops--) {
    const part = plant.graph.parts[plant.graph.ends[met[0]!]!.part]!;
    found.push(part);
    if (part.ends.length !== 2) break;
    met = neighbours(plant, met[0]! ^ 1);
  }
  return found;
}
