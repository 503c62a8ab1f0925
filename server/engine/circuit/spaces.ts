import type { End, Graph, Part } from './graph';
import type { Plant } from './state';

/** A passage of a part, by the number that its two ends share: `end >> 1`. */
export type Cell = number;
export const cellOf = (end: number): Cell => end >> 1;

/** Where a space is open to the air. */
export interface Opening {
  readonly end: number;
  /** Diameter, m; null where it is not known. */
  readonly diameter: number | null;
}

/** What hangs together through made joints and open valves. */
export interface Space {
  readonly cells: readonly Cell[];
  /** Part indexes, each once, in flow order. */
  readonly parts: readonly number[];
  readonly openings: readonly Opening[];
}

export const partOfCell = (graph: Graph, cell: Cell): Part => graph.parts[graph.ends[cell * 2]!.part]!;

/** Whether gas passes through a part's own seat. The seat stands at the outlet: a shut valve's body hangs with its inlet. */
export function seatPasses(plant: Plant, part: Part): boolean {
  const state = plant.parts[part.index]!;
  switch (part.kind.shuts) {
    case undefined:
      return true;
    case 'hand':
      return state.position === 'open';
    case 'driven':
      return state.position === 'open' || (state.position === 'control' && meters(plant, part));
    case 'power':
    case 'control':
      return state.position === 'open' || (state.position === 'control' && plant.power === 'on');
    default:
      return state.position === 'open'; // one way only: it does not equalise, unless it is held open
  }
}

/**
 * Whether a motor valve under control lets refrigerant through: while the machine runs, and the coil behind it with it. At rest
 * its controller parks it shut, whether it has power or not.
 */
const meters = (plant: Plant, part: Part): boolean =>
  plant.running && plant.power !== 'locked-out' && !plant.lockedOut.has(part.index + 1);

/** Whether gas that is in the part gets to this end of it. */
export function endPasses(plant: Plant, end: End): boolean {
  if (plant.ends[end.index]!.valve === 'shut') return false;
  return end.side === 'inlet' || seatPasses(plant, plant.graph.parts[end.part]!);
}

/** Whether a joint leaves a gap: one of its parts is off, or one of its ends is undone. */
export function hasGap(plant: Plant, joint: number): boolean {
  const { ends } = plant.graph.joints[joint]!;
  return ends.some((end) => !isMade(plant, end) && !bridged(plant, end));
}

/** Made up and in place. */
const isMade = (plant: Plant, end: number): boolean =>
  plant.ends[end]!.attached && plant.parts[plant.graph.ends[end]!.part]!.mounted !== 'none';

/**
 * Whether the neighbours of a part that is off are joined to each other past it: of an added part that is not in yet, and
 * of an added or removed one that came out, as long as both neighbours are made up.
 */
const bridged = (plant: Plant, end: number): boolean =>
  isGone(plant, end) &&
  [end, end ^ 1].every((own) =>
    plant.graph.joints[plant.graph.ends[own]!.joint]?.ends.every(
      (other) => other === own || isMade(plant, other) || isGone(plant, other),
    ),
  );

/** Of a part that is off and whose place the line can close over. */
const isGone = (plant: Plant, end: number): boolean => {
  const { part } = plant.graph.ends[end]!;
  const { standing } = plant.graph.parts[part]!;
  return plant.parts[part]!.mounted === 'none' && (standing === 'added' || standing === 'removed');
};

/** The ends that an end meets; past a part that is not in or came out for good, those on its other side. */
export function neighbours(plant: Plant, end: number): readonly number[] {
  const others = (of: number): readonly number[] =>
    plant.graph.joints[plant.graph.ends[of]!.joint]?.ends.filter((each) => each !== of) ?? [];
  let met = others(end);
  for (let hops = plant.graph.parts.length; hops > 0; hops--) {
    const [only] = met;
    if (met.length !== 1 || only === undefined || !isGone(plant, only)) break;
    met = others(only ^ 1);
  }
  return met;
}

/** Whether an end stands open to the air, and how wide. */
export function openingAt(plant: Plant, end: End): Opening | null {
  const state = plant.ends[end.index]!;
  if (plant.parts[end.part]!.mounted === 'none' || !endPasses(plant, end)) return null;
  if (end.joint < 0 ? state.attached : !hasGap(plant, end.joint)) return null;
  const bore = plant.graph.parts[end.part]!.properties.tube?.bore ?? null;
  if (state.closure) return state.closure.opening === null ? null : { end: end.index, diameter: state.closure.opening };
  return { end: end.index, diameter: bore };
}

/** Spaces by the state of all ends and, under it, by what else opens and shuts ways: most steps change neither. */
const remembered = new WeakMap<Plant['ends'], Map<string, readonly Space[]>>();

/** The spaces of the plant as it stands; found once for each way in which its joints and valves stand. */
export function spaces(plant: Plant): readonly Space[] {
  let known = remembered.get(plant.ends);
  if (!known) {
    known = new Map();
    remembered.set(plant.ends, known);
  }
  let ways: string = `${plant.power}${plant.running ? '!' : ''}${[...plant.lockedOut.keys()].join()}`;
  // One letter each that tells all values apart: "none" and "new" do not begin alike here.
  for (const part of plant.parts)
    ways += `${part.mounted === 'none' ? '-' : part.mounted[0]}${part.position?.[0] ?? ''}`;
  let found = known.get(ways);
  if (!found) {
    found = findSpaces(plant);
    known.set(ways, found);
  }
  return found;
}

function findSpaces(plant: Plant): readonly Space[] {
  const { graph } = plant;
  const count = graph.ends.length >> 1;
  const root = Array.from({ length: count }, (_, cell) => cell);
  const find = (cell: number): number => {
    let at = cell;
    while (root[at] !== at) at = root[at] = root[root[at]!]!;
    return at;
  };
  const join = (a: number, b: number): void => {
    const [x, y] = [find(a), find(b)];
    if (x !== y) root[Math.max(x, y)] = Math.min(x, y);
  };
  const mounted = (cell: number): boolean => plant.parts[graph.ends[cell * 2]!.part]!.mounted !== 'none';
  for (const joint of graph.joints) {
    const meeting = joint.ends.filter((end) => isMade(plant, end) && endPasses(plant, graph.ends[end]!));
    for (let k = 1; k < meeting.length; k++) join(cellOf(meeting[0]!), cellOf(meeting[k]!));
    // Past a part that is not there, the neighbours meet at both of its joints.
    for (const end of joint.ends) if (bridged(plant, end) && meeting.length > 0) join(cellOf(meeting[0]!), cellOf(end));
  }
  const grouped = new Map<number, number[]>();
  for (let cell = 0; cell < count; cell++) {
    if (!mounted(cell) && !bridged(plant, cell * 2)) continue;
    const at = find(cell);
    const group = grouped.get(at);
    if (group) group.push(cell);
    else grouped.set(at, [cell]);
  }
  const result: Space[] = [];
  for (const group of grouped.values()) {
    const cells = group.filter(mounted);
    if (cells.length === 0) continue;
    const parts = [...new Set(cells.map((cell) => graph.ends[cell * 2]!.part))];
    const openings: Opening[] = [];
    for (const cell of cells) {
      for (const end of [cell * 2, cell * 2 + 1]) {
        const opening = openingAt(plant, graph.ends[end]!);
        if (opening) openings.push(opening);
      }
    }
    result.push({ cells, parts, openings });
  }
  return result;
}

/** The spaces that a part's passages belong to. */
export const spacesOf = (plant: Plant, part: number): readonly Space[] =>
  spaces(plant).filter((space) => space.parts.includes(part));

/**
 * The way that gas takes from a cell to an opening: cells in order, shortest way. Null where there is none.
 */
export function way(plant: Plant, from: Cell, to: Opening): readonly Cell[] | null {
  const { graph } = plant;
  const target = cellOf(to.end);
  const came = new Map<Cell, Cell | null>([[from, null]]);
  const queue = [from];
  for (let cell = queue.shift(); cell !== undefined; cell = queue.shift()) {
    if (cell === target) {
      const chain: Cell[] = [];
      for (let at: Cell | null = cell; at !== null; at = came.get(at) ?? null) chain.unshift(at);
      return chain;
    }
    for (const end of [cell * 2, cell * 2 + 1]) {
      const joint = graph.ends[end]!.joint;
      if (joint < 0 || !isMade(plant, end) || !endPasses(plant, graph.ends[end]!)) continue;
      for (const other of graph.joints[joint]!.ends) {
        if (other === end || !isMade(plant, other) || !endPasses(plant, graph.ends[other]!)) continue;
        const next = cellOf(other);
        if (!came.has(next)) {
          came.set(next, cell);
          queue.push(next);
        }
      }
    }
  }
  return null;
}
