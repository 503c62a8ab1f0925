import type { Graph } from '../../../server/engine/circuit/graph';
import type { Plan } from '../../../server/engine/plan/plan';
import type { Step } from '../../../server/engine/plan/step';

/**
 * A small model of the plant of its own, for the rulings: which joints are made, what stands in each end, what was proved. It
 * uses the circuit as the plan states it and nothing of the walk or the checks, so that the two can disagree.
 */

/** `old`: what ran before, where that differs. `charge`: what is to run. `traces`: recovered, not yet displaced. `own`: a new unit's. */
export type Gas = 'old' | 'charge' | 'own' | 'traces' | 'air' | 'nitrogen' | 'vacuum';

/** What stands at an end or in a joint; pressure in Pa over the atmosphere. */
export interface Fill {
  readonly gas: Gas;
  readonly pressure: number;
  /** Zero was proved on it. */
  readonly proved: boolean;
  /** A decay test was passed on this vacuum. */
  readonly held: boolean;
}
export const air: Fill = { gas: 'air', pressure: 0, proved: true, held: false };

export type Closure = 'cap' | 'plug' | 'pinch' | 'crimp' | 'choke' | 'tape';
export const leaky = (closure: Closure): boolean => closure === 'crimp' || closure === 'choke' || closure === 'tape';

export interface PartNow {
  mounted: 'old' | 'new' | 'none';
  position: 'open' | 'shut' | 'control';
  /** 2: solvent stands in it; 1: blown out, not dry; 0: dry. */
  wet: 0 | 1 | 2;
  /** Which ways solvent went in since the last purge: once each way is one pass (13.4). */
  ways: 'forward' | 'back' | 'both' | null;
  inspected: boolean;
  /** Highest test since it was last opened, Pa over the atmosphere. */
  tested: number;
  opened: boolean;
}

export interface EndNow {
  made: boolean;
  closure: Closure | null;
  /** Null where no valve stands at this end. */
  valve: 'open' | 'shut' | null;
  fill: Fill;
}

/** A stretch of the plant that hangs together. */
export interface Space {
  readonly ends: readonly number[];
  readonly joints: readonly number[];
  /** Ends at which it is open to the air. */
  readonly leaks: readonly number[];
}

export class Plant {
  readonly graph: Graph;
  readonly parts: PartNow[];
  readonly ends: EndNow[];
  readonly joints: Fill[];
  readonly lockedOut = new Map<string, Step>();
  readonly bypassed = new Map<string, Step>();
  readonly shutBy = new Map<number, Step>();
  readonly heldOpen = new Map<number, Step>();
  readonly done = new Set<string>();
  controls = true;
  running: boolean;
  /** It ran when its power went, and goes on by itself when power is back. */
  resumes = false;
  /** What was read since then, with nobody having started it. */
  readings: { subject: string; step: Step }[] = [];
  chargedBy: Step | null = null;

  constructor(readonly plan: Plan) {
    const { graph } = plan;
    this.graph = graph;
    const { before, after } = plan.system.refrigerant;
    const first: Fill = {
      gas: after === null || after === before ? 'charge' : 'old',
      pressure: 5e5,
      proved: false,
      held: false,
    };
    this.running = !plan.kinds.includes('new');
    this.parts = graph.parts.map((part) => ({
      mounted: part.standing === 'added' ? 'none' : 'old',
      position: part.kind.shuts === undefined || part.kind.shuts === 'hand' ? 'open' : 'control',
      wet: 0,
      ways: null,
      inspected: false,
      tested: 0,
      opened: false,
    }));
    for (const part of graph.parts) {
      if (part.kind.shuts === 'hand' && part.properties.closed && part.standing === 'kept')
        this.parts[part.index]!.position = 'shut';
      if (part.kind.shuts === 'driven') this.parts[part.index]!.position = 'shut';
    }
    this.ends = graph.ends.map((end) => ({
      made: true,
      closure: null,
      valve: end.valve ? 'open' : null,
      fill: this.parts[end.part]!.mounted === 'none' ? air : first,
    }));
    this.joints = graph.joints.map((joint) =>
      plan.kinds.includes('new') && joint.ends.every((end) => graph.parts[graph.ends[end]!.part]!.standing === 'added')
        ? air
        : first,
    );
  }

  /** Where a part is not there yet, or is gone for good, its neighbours meet each other. */
  bridged(part: number): boolean {
    const { standing } = this.graph.parts[part]!;
    return this.parts[part]!.mounted === 'none' && (standing === 'added' || standing === 'removed');
  }

  /** A joint is shut when all that belongs in it stands there and is made up. */
  jointOpen(joint: number): boolean {
    return this.graph.joints[joint]!.ends.some((end) => {
      const part = this.graph.ends[end]!.part;
      return !this.ends[end]!.made || (this.parts[part]!.mounted === 'none' && !this.bridged(part));
    });
  }

  passes(part: number): boolean {
    const now = this.parts[part]!;
    if (now.mounted === 'none') return this.bridged(part);
    const { shuts } = this.graph.parts[part]!.kind;
    if (shuts === undefined || shuts === 'direction') return true;
    return now.position === 'open' || (now.position === 'control' && this.running);
  }

  /** Whether an end lets gas through to what it meets. */
  private through(end: number): boolean {
    const { closure, valve } = this.ends[end]!;
    return valve !== 'shut' && (closure === null || leaky(closure));
  }

  /** All spaces; `compressorStops`: while it pumps down, nothing goes back through it. */
  spaces(compressorStops = false): readonly Space[] {
    const { graph } = this;
    const root = [...graph.ends.map((end) => end.index), ...graph.joints.map((_, k) => graph.ends.length + k)];
    const find = (node: number): number => {
      let at = node;
      while (root[at] !== at) at = root[at] = root[root[at]!]!;
      return at;
    };
    const join = (a: number, b: number): void => {
      root[find(a)] = find(b);
    };
    for (const part of graph.parts) {
      const stops = compressorStops && part.kind.kind === 'compressor';
      for (let k = 0; k + 1 < part.ends.length; k += 2)
        if (this.passes(part.index) && !stops) join(part.ends[k]!, part.ends[k + 1]!);
      const absent = this.parts[part.index]!.mounted === 'none';
      for (const end of part.ends) {
        const joint = graph.ends[end]!.joint;
        if (
          joint >= 0 &&
          (absent ? this.bridged(part.index) && this.ends[end]!.made : this.ends[end]!.made && this.through(end))
        )
          join(end, graph.ends.length + joint);
      }
    }
    const members = new Map<number, { ends: number[]; joints: number[]; leaks: number[] }>();
    const at = (node: number): { ends: number[]; joints: number[]; leaks: number[] } => {
      const key = find(node);
      let found = members.get(key);
      if (!found) members.set(key, (found = { ends: [], joints: [], leaks: [] }));
      return found;
    };
    for (const end of graph.ends) {
      if (this.parts[end.part]!.mounted === 'none') continue;
      const space = at(end.index);
      space.ends.push(end.index);
      if (!this.ends[end.index]!.made && this.through(end.index)) space.leaks.push(end.index);
    }
    graph.joints.forEach((joint, index) => {
      const met = joint.ends.filter((end) => this.parts[graph.ends[end]!.part]!.mounted !== 'none');
      const space = at(graph.ends.length + index);
      space.joints.push(index);
      if (this.jointOpen(index))
        for (const end of met) if (this.ends[end]!.made && this.through(end)) space.leaks.push(end);
    });
    return [...members.values()].filter((space) => space.ends.length > 0);
  }

  fill(space: Space, fill: Fill): void {
    for (const end of space.ends) this.ends[end]!.fill = fill;
    for (const joint of space.joints) this.joints[joint] = fill;
  }

  partsOf(space: Space): readonly number[] {
    return [...new Set(space.ends.map((end) => this.graph.ends[end]!.part))];
  }

  hasPort(space: Space): boolean {
    // A unit's service valve has its port on the side of the line.
    const atValve = space.ends.some((end) =>
      this.graph.joints[this.graph.ends[end]!.joint]?.ends.some((met) => this.ends[met]!.valve !== null),
    );
    return atValve || this.partsOf(space).some((part) => this.graph.parts[part]!.kind.port);
  }

  /** Circuits that the plan says it leaves alone. */
  untouched(part: number): boolean {
    return this.plan.circuits[this.graph.parts[part]!.circuit]?.untouched ?? false;
  }

  get metering(): readonly number[] {
    return this.graph.parts.filter((part) => part.kind.group === 'metering').map((part) => part.index);
  }
}
