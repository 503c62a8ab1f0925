import type { Graph } from './graph';
import { type Cell, partOfCell, type Space, spaces } from './spaces';
import { airOf, type Cause, type Contents, type EndState, type PartState, type Plant, sameContents } from './state';

/** A plant in the making: what a step changes, before it settles into the next state. */
export class Draft {
  private parts: PartState[] | null = null;
  private ends: EndState[] | null = null;
  private rest: Partial<Plant> = {};
  /** Whether `now` has handed the ends out: what is known of a plant is kept by them, so the next change makes new ones. */
  private endsHanded = false;

  constructor(
    readonly before: Plant,
    readonly cause: Cause,
  ) {}

  get graph(): Graph {
    return this.before.graph;
  }
  part(index: number): PartState {
    return (this.parts ?? this.before.parts)[index]!;
  }
  end(index: number): EndState {
    return (this.ends ?? this.before.ends)[index]!;
  }
  setPart(index: number, change: Partial<PartState>): void {
    this.parts ??= [...this.before.parts];
    this.parts[index] = { ...this.parts[index]!, ...change };
  }
  setEnd(index: number, change: Partial<EndState>): void {
    if (this.ends === null || this.endsHanded) this.ends = [...(this.ends ?? this.before.ends)];
    this.endsHanded = false;
    this.ends[index] = { ...this.ends[index]!, ...change };
  }
  set(
    change: Partial<Pick<Plant, 'power' | 'running' | 'resumes' | 'lockedOut' | 'powerBy' | 'bypassed' | 'marks'>>,
  ): void {
    this.rest = { ...this.rest, ...change };
  }
  /** Fills every cell of a space with the same contents. */
  fill(cells: readonly Cell[], contents: Contents): void {
    for (const cell of cells) {
      const { index } = partOfCell(this.graph, cell);
      this.setPart(index, { contents: setCell(this.graph, this.part(index), cell, contents) });
    }
  }
  /** The plant as drafted, not settled: for questions about spaces in the middle of a step. */
  now(): Plant {
    if (!this.parts && !this.ends && Object.keys(this.rest).length === 0) return this.before;
    this.endsHanded = true;
    return {
      ...this.before,
      ...this.rest,
      parts: this.parts ?? this.before.parts,
      ends: this.ends ?? this.before.ends,
    };
  }
}

export function setCell(graph: Graph, state: PartState, cell: Cell, contents: Contents): readonly Contents[] {
  const passage = graph.ends[cell * 2]!.passage;
  if (sameContents(state.contents[passage]!, contents)) return state.contents;
  return state.contents.map((each, k) => (k === passage ? contents : each));
}

export const contentsOfCell = (plant: Plant, cell: Cell): Contents => {
  const { part, passage } = plant.graph.ends[cell * 2]!;
  return plant.parts[part]!.contents[passage]!;
};

/** What came out into the air as a step opened something. */
export interface Released {
  readonly space: Space;
  readonly contents: Contents;
}

/**
 * Lets the plant come to rest after a step: what is open to the air holds air and has lost its proofs; what hangs
 * together shares what it holds.
 */
export function settle(draft: Draft): { plant: Plant; released: readonly Released[] } {
  const drafted = draft.now();
  const released: Released[] = [];
  const next = new Draft(drafted, draft.cause);
  for (const space of spaces(drafted)) {
    if (space.openings.length > 0) open(space);
    else share(space);
  }
  if (drafted.resumes && !holdsCharge(next.now())) next.set({ resumes: false });
  return { plant: next.now(), released };

  function open(space: Space): void {
    const air = airOf(drafted.atmosphere, draft.cause);
    let gone: Contents | null = null;
    for (const cell of space.cells) {
      const { index } = partOfCell(drafted.graph, cell);
      const state = next.part(index);
      const holding = state.contents[drafted.graph.ends[cell * 2]!.passage]!;
      if (holding.gas !== 'air') {
        if (holding.gas === 'refrigerant' && (gone === null || holding.high > gone.high)) gone = holding;
        next.setPart(index, { contents: setCell(drafted.graph, state, cell, air) });
      }
      const fresh = next.part(index);
      // The tightness of joints that nobody touched stays proven; dryness does not survive the air.
      if (fresh.opened === null || fresh.decayTested || fresh.evacuated || fresh.ownCharge) {
        next.setPart(index, { opened: draft.cause, decayTested: null, evacuated: null, ownCharge: false });
      }
    }
    if (gone) released.push({ space, contents: gone });
  }

  function share(space: Space): void {
    const held = space.cells.map((cell) => contentsOfCell(drafted, cell));
    const [one] = held;
    if (!one || held.every((each) => sameContents(each, one) || alike(each, one))) return;
    const mixed = mix(
      held,
      space.cells.map((cell) => cellVolume(drafted.graph, cell)),
      draft.cause,
    );
    for (const cell of space.cells) {
      const { index } = partOfCell(drafted.graph, cell);
      const state = next.part(index);
      next.setPart(index, {
        contents: setCell(drafted.graph, state, cell, mixed),
        ...(state.ownCharge ? { ownCharge: false } : {}),
      });
    }
    // Air that is let into a part that was proven spoils the proof of dryness, not that of tightness.
    if (held.some((each) => each.gas === 'air' && each.low > drafted.atmosphere * 0.5)) {
      for (const part of space.parts)
        if (next.part(part).evacuated) next.setPart(part, { evacuated: null, decayTested: null });
    }
  }
}

/** Whether a compressor that the plan works on still stands in refrigerant; a circuit with none keeps what it has. */
function holdsCharge(plant: Plant): boolean {
  const compressors = plant.graph.parts.filter(
    (part) => part.kind.kind === 'compressor' && !plant.graph.circuits[part.circuit]?.untouched,
  );
  return (
    compressors.length === 0 ||
    compressors.some(({ index }) => {
      const { mounted, contents } = plant.parts[index]!;
      const [held] = contents;
      return mounted !== 'none' && held?.gas === 'refrigerant' && (held.liquid || held.high > plant.atmosphere * 0.98);
    })
  );
}

const alike = (a: Contents, b: Contents): boolean =>
  a.gas === b.gas && a.refrigerant === b.refrigerant && a.low === b.low && a.high === b.high && a.liquid === b.liquid;

/** Inside volume of a passage, m3: stated, or from the tube; a litre for what is not known (only the mixing of gases uses it). */
export function cellVolume(graph: Graph, cell: Cell): number {
  const { properties } = partOfCell(graph, cell);
  if (properties.volume !== undefined) return properties.volume;
  if (properties.tube && properties.length !== undefined)
    return (Math.PI / 4) * properties.tube.bore ** 2 * properties.length;
  return 0.001;
}

/** Gases that come together: pressures add by volume, liquid keeps its own pressure, a refrigerant is not forgotten. */
function mix(held: readonly Contents[], volumes: readonly number[], since: Cause): Contents {
  const names = [...new Set(held.map((each) => each.refrigerant).filter((each): each is string => each !== null))];
  const refrigerant = names.length > 1 ? names.join(' and ') : (names[0] ?? null);
  const liquid = held.find((each) => each.liquid);
  if (liquid) return { gas: 'refrigerant', refrigerant, low: liquid.low, high: liquid.high, liquid: true, since };
  const total = volumes.reduce((sum, each) => sum + each, 0);
  const mean = (pick: (each: Contents) => number): number =>
    held.reduce((sum, each, k) => sum + pick(each) * volumes[k]!, 0) / total;
  const share = (gas: Contents['gas']): number =>
    held.reduce((sum, each, k) => sum + (each.gas === gas ? each.low * volumes[k]! : 0), 0);
  const gases = (['refrigerant', 'nitrogen', 'air', 'vacuum'] as const).filter((gas) => share(gas) > 0);
  const gas = gases.reduce((best, each) => (share(each) > share(best) ? each : best), gases[0] ?? 'vacuum');
  return { gas, refrigerant, low: mean((each) => each.low), high: mean((each) => each.high), liquid: false, since };
}
