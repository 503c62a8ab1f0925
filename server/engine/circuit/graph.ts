import { inUnit, type Kind } from './kinds';

/**
 * The circuit as a graph: parts with ends, ends that meet in joints. It is the map that every question about the plant is
 * answered from; it never changes during a plan, what stands in it does (see `state.ts`).
 */

export interface Trap {
  /** From the line's near end, m. */
  readonly at: number;
  /** Depth of the loop, m. */
  readonly depth: number;
}

export interface Tube {
  /** As the plan writes it: "3/8 in ACR". */
  readonly shown: string;
  /** Outside diameter, wall and bore, m. */
  readonly outside: number;
  readonly wall: number;
  readonly bore: number;
  /** Whether the wall was measured on the job or is the standard's. */
  readonly measured: boolean;
}

export interface Charge {
  readonly refrigerant: string;
  /** kg; null where the plan does not say. */
  readonly mass: number | null;
}

/** What a plan says of a part. SI: m, m3, kg, Pa absolute, W. */
export interface Properties {
  readonly tube?: Tube;
  readonly length?: number;
  readonly rise?: number;
  readonly drop?: number;
  readonly traps?: readonly Trap[];
  readonly elbows?: { readonly count: number; readonly kind: string };
  readonly joint?: 'brazed' | 'flare' | 'pressed' | 'flanged';
  readonly rated?: number;
  readonly relief?: number;
  readonly volume?: number;
  readonly holds?: Charge;
  readonly valves?: 'open' | 'closed';
  readonly closed?: boolean;
  readonly oil?: { readonly kind: string | null; readonly volume: number };
  readonly core?: string;
  readonly bore?: number;
  readonly capacity?: { readonly full: number; readonly least: number | null };
  readonly sensor?: boolean;
  readonly bothWays?: boolean;
  /** Limits that the maker's sheet gives, by the word that it stands at: `rise` -> "maker's sheet, lift table". */
  readonly per?: Readonly<Record<string, string>>;
}

/** `new`: the old one of its kind stands until a step takes it off. `added`: nothing stood there before. */
export type Standing = 'kept' | 'new' | 'added' | 'reused' | 'removed';

export interface PartSpec {
  readonly name: string;
  readonly kind: Kind;
  readonly standing: Standing;
  readonly properties: Properties;
}

export type SeriesItem =
  | { readonly type: 'part'; readonly part: PartSpec }
  | {
      readonly type: 'parallel';
      readonly name: string | null;
      readonly branches: readonly { readonly name: string | null; readonly series: Series }[];
      /** The parts come in one casing. */
      readonly casing?: true;
    }
  | { readonly type: 'through'; readonly name: string };
export type Series = readonly SeriesItem[];

export interface CircuitSpec {
  /** Null for the only circuit of a plan. */
  readonly name: string | null;
  readonly untouched: boolean;
  readonly series: Series;
  readonly sections: readonly { readonly name: string; readonly from: string; readonly to: string }[];
}

export interface Part extends PartSpec {
  readonly index: number;
  readonly circuit: number;
  /** Ends by passage: [inlet, outlet] of the first, then of the second. Indexes into `Graph.ends`. */
  readonly ends: readonly number[];
  /** Names of the parallels and branches that it stands in, from outside to inside. */
  readonly within: readonly string[];
  /** High side in cooling: from a compressor's outlet to the metering device. */
  readonly highSide: boolean;
  /** The casing that the plan puts it in, by a number of its own; null if it stands in none. */
  readonly casing: number | null;
  /** The unit that it came in, by the index of its flagged part; null if it came alone. */
  readonly unit: number | null;
}

export interface End {
  readonly index: number;
  readonly part: number;
  readonly passage: number;
  readonly side: 'inlet' | 'outlet';
  readonly joint: number;
  /** A valve of the unit or of the part itself at this end. */
  readonly valve: boolean;
}

export interface Joint {
  readonly index: number;
  readonly ends: readonly number[];
}

export interface Graph {
  readonly circuits: readonly CircuitSpec[];
  readonly parts: readonly Part[];
  readonly ends: readonly End[];
  readonly joints: readonly Joint[];
  /** Part indexes by name of part, section, parallel, branch or circuit. */
  readonly named: ReadonlyMap<string, readonly number[]>;
}

interface DraftEnd {
  part: number;
  passage: number;
  side: 'inlet' | 'outlet';
  joint: number;
  valve: boolean;
}

/** Builds the graph of a plan's circuits. Unknown `through` names and section ends are passed over; the plan reports them. */
export function buildGraph(specs: readonly CircuitSpec[]): Graph {
  const drafts: { spec: PartSpec; circuit: number; within: string[]; casing: number | null; ends: number[] }[] = [];
  let casings = 0;
  const ends: DraftEnd[] = [];
  const groups: number[][] = []; // ends that meet
  const named = new Map<string, number[]>();
  const order: { part: number; passage: number; circuit: number }[] = [];
  const name = (key: string, part: number): void => {
    const known = named.get(key);
    if (!known) named.set(key, [part]);
    else if (!known.includes(part)) known.push(part);
  };

  const passage = (part: number, number: number): { inlet: number; outlet: number } => {
    const inlet = ends.push({ part, passage: number, side: 'inlet', joint: -1, valve: false }) - 1;
    const outlet = ends.push({ part, passage: number, side: 'outlet', joint: -1, valve: false }) - 1;
    drafts[part]!.ends.push(inlet, outlet);
    return { inlet, outlet };
  };

  /** Lays a series; returns the ends that stand open at its beginning and its end. */
  const lay = (
    series: Series,
    circuit: number,
    within: string[],
    casing: number | null,
  ): { begin: number[]; finish: number[] } => {
    let begin: number[] | null = null;
    let open: number[] = [];
    const meet = (inlets: number[], outlets: number[]): void => {
      if (inlets.length === 0) return;
      if (begin === null) begin = inlets;
      else groups.push([...open, ...inlets]);
      open = outlets;
    };
    for (const item of series) {
      if (item.type === 'part') {
        const part = drafts.push({ spec: item.part, circuit, within: [...within], casing, ends: [] }) - 1;
        name(item.part.name, part);
        for (const outer of within) name(outer, part);
        const { inlet, outlet } = passage(part, 0);
        order.push({ part, passage: 0, circuit });
        meet([inlet], [outlet]);
      } else if (item.type === 'through') {
        const part = drafts.findIndex((each) => each.spec.name === item.name && each.circuit === circuit);
        if (part < 0) continue;
        const number = drafts[part]!.ends.length / 2;
        const { inlet, outlet } = passage(part, number);
        order.push({ part, passage: number, circuit });
        meet([inlet], [outlet]);
      } else {
        const inlets: number[] = [];
        const outlets: number[] = [];
        const around = item.casing ? casings++ : casing;
        for (const branch of item.branches) {
          const names = [item.name, branch.name].filter((each): each is string => each !== null);
          const laid = lay(branch.series, circuit, [...within, ...names], around);
          for (const each of laid.begin) inlets.push(each);
          for (const each of laid.finish) outlets.push(each);
        }
        meet(inlets, outlets);
      }
    }
    return { begin: begin ?? [], finish: open };
  };

  specs.forEach((spec, circuit) => {
    const { begin, finish } = lay(spec.series, circuit, spec.name === null ? [] : [spec.name], null);
    if (begin.length > 0) groups.push([...finish, ...begin]);
  });
  groups.forEach((group, joint) => {
    for (const each of group) ends[each]!.joint = joint;
  });

  const units = findUnits(
    drafts.map((each) => each.spec),
    drafts.map((each) => each.casing),
    order,
  );
  for (const [flagged, members] of units) {
    if (drafts[flagged]!.spec.properties.valves !== 'closed') continue;
    // The unit's valves stand where it meets what is not of the unit.
    for (const member of members) {
      for (const each of drafts[member]!.ends) {
        const others = groups[ends[each]!.joint]?.filter((other) => other !== each) ?? [];
        if (others.some((other) => !members.includes(ends[other]!.part))) ends[each]!.valve = true;
      }
    }
  }
  drafts.forEach((draft, part) => {
    const unit = [...units.values()].find((members) => members.includes(part));
    if (draft.spec.properties.valves !== undefined && !(unit && draft.spec.properties.valves === 'closed')) {
      for (const each of draft.ends) ends[each]!.valve = true;
    }
  });
  sections(specs, order, named);

  const high = highSide(
    drafts.map((each) => each.spec.kind),
    order,
  );
  const unitOf = (part: number): number | null => {
    for (const [flagged, members] of units) if (members.includes(part)) return flagged;
    return null;
  };
  return {
    circuits: specs,
    parts: drafts.map((draft, index) => ({
      ...draft.spec,
      index,
      circuit: draft.circuit,
      ends: draft.ends,
      within: draft.within,
      casing: draft.casing,
      highSide: high.has(index),
      unit: unitOf(index),
    })),
    ends: ends.map((draft, index) => ({ ...draft, index })),
    joints: groups.map((group, index) => ({ index, ends: group })),
    named,
  };
}

/**
 * Units of new equipment: the run of parts that stand in one casing around one that has `valves closed` or `holds` a
 * charge, in flow order and round the end of the list, up to the first line, and all that the plan draws in one casing with it.
 */
function findUnits(
  parts: readonly PartSpec[],
  casings: readonly (number | null)[],
  order: readonly { part: number; circuit: number }[],
): Map<number, readonly number[]> {
  const units = new Map<number, readonly number[]>();
  const isNew = (part: number): boolean => parts[part]!.standing === 'new' || parts[part]!.standing === 'added';
  order.forEach(({ part, circuit }, at) => {
    const { properties, kind } = parts[part]!;
    if (!inUnit(kind) || !isNew(part) || !(properties.holds || properties.valves === 'closed')) return;
    if ([...units.values()].some((members) => members.includes(part))) return;
    const ring = order.filter((each) => each.circuit === circuit);
    const here = ring.indexOf(order[at]!);
    const members = new Set([part]);
    const casing = casings[part] ?? null;
    if (casing !== null)
      for (const each of parts.keys()) if (casings[each] === casing && isNew(each)) members.add(each);
    for (const direction of [1, -1]) {
      for (let k = 1; k < ring.length; k++) {
        const next = ring[(here + direction * k + ring.length * k) % ring.length]!.part;
        if (!isNew(next)) break;
        if (members.has(next)) continue;
        // A stop valve behind the unit that is spelled out and comes shut: its body holds the unit's charge, too.
        if (direction === 1 && parts[next]!.properties.closed && parts[next]!.kind.shuts === 'hand') members.add(next);
        if (!inUnit(parts[next]!.kind)) break;
        members.add(next);
      }
    }
    units.set(part, [...members]);
  });
  return units;
}

/** Sections are stretches of the flow order, both ends included; an end may be a parallel or a branch, which is then in it whole. */
function sections(
  specs: readonly CircuitSpec[],
  order: readonly { part: number; circuit: number }[],
  named: Map<string, number[]>,
): void {
  specs.forEach((spec, circuit) => {
    const ring = order.filter((each) => each.circuit === circuit).map((each) => each.part);
    for (const section of spec.sections) {
      const from = named.get(section.from);
      const to = named.get(section.to);
      if (!from || !to) continue;
      const start = Math.min(...from.map((part) => ring.indexOf(part)).filter((at) => at >= 0));
      const finish = Math.max(...to.map((part) => ring.lastIndexOf(part)));
      const members: number[] = [];
      for (let at = start, left = ring.length; left > 0; at = (at + 1) % ring.length, left--) {
        if (!members.includes(ring[at]!)) members.push(ring[at]!);
        if (at === finish) break;
      }
      if (!named.has(section.name)) named.set(section.name, members);
    }
  });
}

/** From a compressor's outlet on in flow order until a metering device, the high side in cooling. */
function highSide(
  partKinds: readonly Kind[],
  order: readonly { part: number; passage: number; circuit: number }[],
): Set<number> {
  const high = new Set<number>();
  const circuits = new Set(order.map((each) => each.circuit));
  for (const circuit of circuits) {
    const ring = order.filter((each) => each.circuit === circuit);
    const start = ring.findIndex((each) => partKinds[each.part]!.kind === 'compressor');
    if (start < 0) continue;
    let on = true;
    for (let k = 0; k < ring.length; k++) {
      const { part } = ring[(start + k) % ring.length]!;
      const kind = partKinds[part]!;
      if (kind.kind === 'compressor') on = true;
      // Each branch of a parallel begins on the high side again if it brings its own metering device; a line that is named for its side settles it.
      if (
        kind.kind === 'liquid-line' ||
        kind.kind === 'discharge-line' ||
        kind.kind === 'hot-gas-line' ||
        kind.kind === 'receiver' ||
        kind.kind === 'condenser'
      )
        on = true;
      if (
        kind.kind === 'suction-line' ||
        kind.kind === 'vapour-line' ||
        kind.kind === 'accumulator' ||
        kind.kind === 'evaporator'
      )
        on = false;
      if (kind.group === 'metering' || kind.kind === 'solenoid') on = true;
      if (on) high.add(part);
      if (kind.group === 'metering') on = false;
    }
  }
  return high;
}

/** The far end of a line: the lower one where there is a choice, else the one that the flow leaves by. Solvent goes in at the other. */
export function farEnd(part: Part): number {
  const [inlet, outlet] = part.ends as [number, number];
  const climb = (part.properties.rise ?? 0) - (part.properties.drop ?? 0);
  return climb > 0 ? inlet : outlet;
}
export const nearEnd = (part: Part): number => {
  const far = farEnd(part);
  return part.ends[0] === far ? part.ends[1]! : part.ends[0]!;
};
