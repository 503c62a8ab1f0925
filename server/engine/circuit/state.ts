import type { Graph } from './graph';

/**
 * How the plant stands between two steps: for each part what it holds, whether it is in place, wet, proven; for each end
 * whether its joint is made and what closes it. Immutable; a step makes a new one that shares all that it left alone.
 */

/**
 * The step that made something so; null means "as the plan begins". A handle, compared by identity: it outlives a rewording
 * of its step, so that what was walked behind it stays good. The walk knows which step it stands for.
 */
export interface Cause {
  /** The step's word when the handle was made; for people who debug. */
  readonly word: string;
}

export interface Contents {
  readonly gas: 'refrigerant' | 'air' | 'nitrogen' | 'vacuum';
  /** The refrigerant, also the trace of it that nitrogen or a rough vacuum still carries. */
  readonly refrigerant: string | null;
  /** Pa absolute. */
  readonly low: number;
  readonly high: number;
  readonly liquid: boolean;
  readonly since: Cause | null;
}

/** A passed test: at which pressure or level (Pa absolute) and by which step. */
export interface Proof {
  readonly level: number;
  readonly by: Cause;
}

export interface PartState {
  /** `old`: what stood there before the job (also a kept part); `none`: off; `new`: the new one, or the kept one put back. */
  readonly mounted: 'old' | 'none' | 'new';
  /** By passage. */
  readonly contents: readonly Contents[];
  /** Of a part that can shut. */
  readonly position: 'open' | 'shut' | 'control' | null;
  /** What holds a powered or pressure-driven valve open: magnet, stem. */
  readonly heldBy: string | null;
  readonly wet: Cause | null;
  /** Old oil that is still in it (`share` of what was there), and acid of a burnout. */
  readonly residue: { readonly oil: string | null; readonly share: number; readonly acid: boolean };
  /** The step since when air has been in it and no test has cleared it. */
  readonly opened: Cause | null;
  readonly tested: Proof | null;
  readonly evacuated: Proof | null;
  readonly decayTested: Proof | null;
  readonly inspected: Cause | null;
  readonly drained: Cause | null;
  /** The step that blew the solvent out for good. */
  readonly finalPurge: Cause | null;
  readonly provedZero: Cause | null;
  readonly cores: 'in' | 'out';
  /** The charge that it came with is still shut in behind its own valves. */
  readonly ownCharge: boolean;
  /** The last flush pass that no purge has followed, and the end or ends that solvent went in at since the last purge. */
  readonly unpurged: { readonly by: Cause; readonly from: 'near end' | 'far end' | 'both ends' } | null;
  /** The step that made it new: a new part put in, or its inside renewed. A kept part that is put back is not new. */
  readonly renewed: Cause | null;
  /** The step that last set it in place; null for what stands where it stood. */
  readonly setBy: Cause | null;
}

export interface Closure {
  readonly kind: 'cap' | 'plug' | 'tape' | 'crimp' | 'choke' | 'pinch' | 'swab';
  /** Diameter of the hole that it leaves, m; null where it shuts. */
  readonly opening: number | null;
  readonly by: Cause;
}

export interface EndState {
  readonly attached: boolean;
  readonly closure: Closure | null;
  /** Of an end that has a valve of its own. */
  readonly valve: 'open' | 'shut' | null;
  readonly detachedBy: Cause | null;
}

export type Power = 'on' | 'controls' | 'locked-out';

export interface Plant {
  readonly graph: Graph;
  readonly parts: readonly PartState[];
  readonly ends: readonly EndState[];
  readonly power: Power;
  readonly running: boolean;
  /** It ran when the power was locked out, and its charge has stayed in since: with the power it runs again. */
  readonly resumes: boolean;
  /** Parts locked out on their own. */
  readonly lockedOut: ReadonlyMap<number, Cause>;
  readonly powerBy: Cause | null;
  /** What was put out of action, by name, and by which step. */
  readonly bypassed: ReadonlyMap<string, Cause>;
  /** What was done beside the parts, by what it was done to ("renew seals", "survey system"), and by which step. */
  readonly marks: ReadonlyMap<string, Cause>;
  /** Pa: the site's atmosphere. */
  readonly atmosphere: number;
}

/** What the parts hold when the job begins. Pressures in Pa absolute. */
export interface Start {
  readonly atmosphere: number;
  /** Refrigerant that is in now; null for a circuit that is empty. */
  readonly refrigerant: string | null;
  readonly oldOil: string | null;
  readonly oilChanges: boolean;
  readonly acid: boolean;
  /** Saturation pressure of a refrigerant between the site's temperatures: [low, high]. */
  pressureOf(refrigerant: string): readonly [number, number];
}

export function beginning(graph: Graph, start: Start): Plant {
  const air = airOf(start.atmosphere, null);
  const parts = graph.parts.map((part): PartState => {
    const untouched = graph.circuits[part.circuit]?.untouched ?? false;
    const mounted = part.standing === 'added' ? 'none' : 'old';
    const charged: Contents =
      start.refrigerant === null ? air : filled(start.refrigerant, start.pressureOf(start.refrigerant), null);
    const shuts = part.kind.shuts;
    return {
      mounted,
      contents: Array.from({ length: part.ends.length / 2 }, () => charged),
      position:
        shuts === undefined
          ? null
          : part.standing === 'kept' && part.properties.closed
            ? 'shut'
            : shuts === 'hand'
              ? 'open'
              : 'control',
      heldBy: null,
      wet: null,
      residue: {
        oil: start.oilChanges && !untouched ? start.oldOil : null,
        share: start.oilChanges && !untouched ? 1 : 0,
        acid: start.acid && !untouched,
      },
      opened: null,
      tested: null,
      evacuated: null,
      decayTested: null,
      inspected: null,
      drained: null,
      finalPurge: null,
      provedZero: null,
      cores: 'in',
      ownCharge: false,
      unpurged: null,
      renewed: null,
      setBy: null,
    };
  });
  const ends = graph.ends.map((end): EndState => {
    const part = graph.parts[end.part]!;
    const shutNow = end.valve && part.properties.valves === 'closed' && part.standing === 'kept';
    return {
      attached: parts[end.part]!.mounted !== 'none',
      closure: null,
      valve: end.valve ? (shutNow ? 'shut' : 'open') : null,
      detachedBy: null,
    };
  });
  // Where a part is added, its neighbours were joined to each other: the joint was whole, so their ends count as made.
  return {
    graph,
    parts,
    ends,
    power: 'on',
    running: start.refrigerant !== null,
    resumes: false,
    lockedOut: new Map(),
    powerBy: null,
    bypassed: new Map(),
    marks: new Map(),
    atmosphere: start.atmosphere,
  };
}

export const airOf = (atmosphere: number, since: Cause | null): Contents => ({
  gas: 'air',
  refrigerant: null,
  low: atmosphere,
  high: atmosphere,
  liquid: false,
  since,
});
export const filled = (refrigerant: string, [low, high]: readonly [number, number], since: Cause | null): Contents => ({
  gas: 'refrigerant',
  refrigerant,
  low,
  high,
  liquid: true,
  since,
});

/** What it holds, in a word or two, as the command line and the drawing say it. */
export function holds(contents: Contents): string {
  if (contents.gas === 'refrigerant') return contents.refrigerant ?? 'refrigerant';
  if (contents.gas === 'nitrogen' && contents.refrigerant) return `nitrogen with ${contents.refrigerant}`;
  return contents.gas;
}

export const sameContents = (a: Contents, b: Contents): boolean =>
  a === b ||
  (a.gas === b.gas &&
    a.refrigerant === b.refrigerant &&
    a.low === b.low &&
    a.high === b.high &&
    a.liquid === b.liquid &&
    a.since === b.since);
