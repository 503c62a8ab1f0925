import type { Graph, Part } from '../circuit/graph';
import { contentsOfCell } from '../circuit/settle';
import { hasGap, type Space, spaces, spacesOf } from '../circuit/spaces';
import type { Cause, Contents, Plant } from '../circuit/state';
import type { Plan } from '../plan/plan';
import type { Step } from '../plan/step';
import { psi } from '../reference/table-units';
import type { Entry } from '../walk/walk';

/** Questions that many checks ask of the plant as it stands. */

/** A hair above the atmosphere is a gauge that reads zero, Pa. */
const gaugeZero = 0.3 * psi;
/** More than this is pressure that throws parts about; a break to 0 to 3 psig is not (handbook 8.2, common practice). */
const slightPressure = 5 * psi;

export const aboveZero = (plant: Plant, contents: Contents): boolean => contents.high > plant.atmosphere + gaugeZero;
/** Refrigerant that a gauge shows. */
export const refrigerantShows = (plant: Plant, contents: Contents): boolean =>
  contents.gas === 'refrigerant' && aboveZero(plant, contents);
export const underPressure = (plant: Plant, contents: Contents): boolean =>
  contents.high > plant.atmosphere + slightPressure;

/** What a space holds: of several contents the one under the highest pressure. */
export const heldBy = (plant: Plant, space: Space): Contents =>
  space.cells.map((cell) => contentsOfCell(plant, cell)).reduce((most, each) => (each.high > most.high ? each : most));

export const touched = (graph: Graph, index: number): boolean =>
  !graph.circuits[graph.parts[index]!.circuit]?.untouched;

/** Spaces of the circuits that the plan works on. */
export const touchedSpaces = (plant: Plant): readonly Space[] =>
  spaces(plant).filter((space) => space.parts.some((index) => touched(plant.graph, index)));

export const isCompressor = (part: Part): boolean => part.kind.kind === 'compressor';
export const isDrier = (part: Part): boolean => part.kind.group === 'drier';
/** Beside a liquid line or a metering device: in a heat pump liquid goes through it, whichever way round. */
export const isInLiquid = (graph: Graph, part: Part): boolean =>
  part.ends.some((end) =>
    (graph.joints[graph.ends[end]!.joint]?.ends ?? []).some((each) => {
      const { kind } = graph.parts[graph.ends[each]!.part]!;
      return kind.kind === 'liquid-line' || kind.group === 'metering';
    }),
  );
/** A drier's shell between its own shut valves: its cores are changed there without touching the rest. */
export const onlyDriers = (plant: Plant, space: Space): boolean =>
  space.parts.every((index) => isDrier(plant.graph.parts[index]!));

/** A compressor alone between its own shut valves: its maker tested the shell, the crew soaps the joints. */
export const isCasing = (graph: Graph, space: Space): boolean =>
  space.parts.every((index) => isCompressor(graph.parts[index]!) || graph.parts[index]!.kind.group === 'valve');

/** "the inlet of suction-line (to filter-drier)": an end as people find it. */
export function endName(graph: Graph, end: number): string {
  const it = graph.ends[end]!;
  const name = graph.parts[it.part]!.name;
  const others = (graph.joints[it.joint]?.ends ?? [])
    .filter((each) => each !== end)
    .map((each) => graph.parts[graph.ends[each]!.part]!.name);
  return `the ${it.side} of ${name}${others.length > 0 ? ` (to ${[...new Set(others)].join(', ')})` : ''}`;
}

/** The step that undid the joint at which a space stands open: of the end itself or of its neighbour. */
export function openedBy(plant: Plant, end: number): Cause | null {
  const { graph } = plant;
  const joint = graph.joints[graph.ends[end]!.joint];
  for (const each of [end, ...(joint?.ends ?? [])]) {
    const { detachedBy, attached } = plant.ends[each]!;
    if (!attached && detachedBy) return detachedBy;
  }
  for (const each of joint?.ends ?? []) if (plant.ends[each]!.detachedBy) return plant.ends[each]!.detachedBy;
  return null;
}

/** Made joints: closed up, whatever still sits in them. */
export const isJoined = (plant: Plant, end: number): boolean => {
  const { joint } = plant.graph.ends[end]!;
  return joint >= 0 && plant.ends[end]!.attached && !hasGap(plant, joint);
};

/** Whether a part stands in the plan's plant now. */
export const standsNow = (plant: Plant, index: number): boolean => plant.parts[index]!.mounted !== 'none';

/** Whether a refrigerant above the atmosphere is in every passage of the part. */
export const isCharged = (plant: Plant, index: number): boolean =>
  plant.parts[index]!.contents.every((each) => each.gas === 'refrigerant' && each.high > plant.atmosphere * 0.98);

/** The compressors that would turn when power comes: in place and not locked out on their own. */
export const readyCompressors = (plant: Plant): readonly Part[] =>
  plant.graph.parts.filter(
    (part) =>
      isCompressor(part) &&
      touched(plant.graph, part.index) &&
      standsNow(plant, part.index) &&
      !plant.lockedOut.has(part.index),
  );

export const spaceAt = (plant: Plant, index: number): Space | undefined => spacesOf(plant, index)[0];

/** The repeat that a step stands in, the innermost. */
export const repeatAround = (entry: Entry): Step | undefined =>
  [...entry.slot.within].reverse().find((step) => step.word.word === 'repeat');

/** Parts that lie between the two passages of a reversing valve, where the flow turns round. */
export function flowsBothWays(graph: Graph, part: Part): boolean {
  return graph.parts.some((valve) => {
    if (valve.kind.kind !== 'reversing-valve' || valve.circuit !== part.circuit || valve.ends.length < 4) return false;
    const first = valve.ends[1]!;
    const second = valve.ends[2]!;
    return part.ends.every((end) => end > first && end < second);
  });
}

/** Whether two plants differ in nothing that opens and shuts a way: seen at once, for most steps. */
const standAlike = (one: Plant, other: Plant): boolean =>
  one.ends === other.ends &&
  one.power === other.power &&
  one.running === other.running &&
  one.lockedOut === other.lockedOut &&
  one.parts.every(
    (part, at) => part.position === other.parts[at]!.position && part.mounted === other.parts[at]!.mounted,
  );

/** A section that a step lets refrigerant into by a valve, as it stood before: what was shut off from the charge until then. */
export function sectionsLetIn(before: Plant, after: Plant): readonly Space[] {
  if (before === after) return noSpaces;
  let known = letIn.get(after);
  if (known?.before !== before) letIn.set(after, (known = { before, found: findLetIn(before, after) }));
  return known.found;
}

const noSpaces: readonly Space[] = [];
/** Several checks ask at each step, and again where ways back are rehearsed. */
const letIn = new WeakMap<Plant, { readonly before: Plant; readonly found: readonly Space[] }>();

function findLetIn(before: Plant, after: Plant): readonly Space[] {
  if (standAlike(before, after) || spaces(before) === spaces(after)) return noSpaces;
  return spaces(before).filter((space) => {
    if (space.openings.length > 0 || heldBy(before, space).gas === 'refrigerant') return false;
    const [part] = space.parts;
    if (part === undefined || !touched(before.graph, part)) return false;
    const joined = spaces(after).find((each) => space.cells.every((cell) => each.cells.includes(cell)));
    return joined !== undefined && joined.cells.length > space.cells.length && isCharged(after, part);
  });
}

/** Whether a thermostatic or a motor valve meters the refrigerant: then the charge is judged by its subcooling, else by superheat. */
export const hasExpansionValve = ({ graph }: Plan): boolean =>
  graph.parts.some(
    ({ kind, index }) =>
      (kind.kind === 'expansion-valve' || kind.kind === 'electronic-expansion-valve') && touched(graph, index),
  );

/** What an adjusting is held against: of a valve its superheat; of the charge the subcooling where a valve meters, else the superheat. */
export const judgedBy = (plan: Plan, adjusted: string): 'superheat' | 'subcooling' =>
  adjusted === 'superheat' || !hasExpansionValve(plan) ? 'superheat' : 'subcooling';
