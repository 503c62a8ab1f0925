import type { Opening, Space } from '../circuit/spaces';
import type { Contents } from '../circuit/state';
import type { Quantity } from '../quantity';

/**
 * What a step did, as facts about the plant: who opened what that held which gas, which way a flush took, what a test
 * pressed on. The checks and the take-off read these and the states before and after; they never read the words.
 */
export type Event =
  | {
      readonly type: 'opens';
      readonly part: number;
      readonly ends: readonly number[];
      readonly held: Contents;
      readonly space: Space;
      readonly how: 'undone' | 'cut' | 'taken off' | 'pierced';
    }
  /** What stands in a closed part is let out at a plug or a drain valve of its own. */
  | { readonly type: 'drains'; readonly part: number; readonly held: Contents; readonly space: Space }
  | {
      readonly type: 'joins';
      readonly part: number;
      readonly ends: readonly number[];
      readonly torch: boolean;
      readonly nitrogen: Quantity | null;
      readonly with: string | null;
    }
  | { readonly type: 'closes'; readonly part: number; readonly end: number; readonly closure: string }
  | Flow
  | {
      readonly type: 'pressurises';
      readonly medium: string;
      readonly level: number;
      readonly spaces: readonly Space[];
      /** Of a vacuum that is broken: all that the step speaks of, under vacuum or not. */
      readonly meant?: readonly Space[];
      readonly time: Quantity | null;
      readonly purpose: 'test' | 'break';
    }
  | {
      readonly type: 'recovers';
      /** The parts that the step names; the hose reaches all that hangs together with them. */
      readonly named: readonly number[];
      readonly spaces: readonly Space[];
      readonly held: readonly Contents[];
      readonly level: number;
      readonly into: string | null;
      readonly missed: readonly Space[];
    }
  | {
      readonly type: 'evacuates';
      readonly spaces: readonly Space[];
      readonly level: number;
      readonly missed: readonly Space[];
    }
  | {
      readonly type: 'stands';
      readonly spaces: readonly Space[];
      readonly time: Quantity | null;
      readonly rise: number | null;
    }
  /** Refrigerant that is let into the air on purpose. */
  | {
      readonly type: 'vents';
      /** The parts that the step names; all that hangs together with them goes, too. */
      readonly named: readonly number[];
      readonly spaces: readonly Space[];
      readonly held: readonly Contents[];
      readonly outdoors: boolean;
      /** Sections of it behind shut valves, with no port to let them off by. */
      readonly missed: readonly Space[];
    }
  | {
      readonly type: 'lets-down';
      readonly spaces: readonly Space[];
      readonly levels: readonly number[];
      readonly outdoors: boolean;
    }
  | { readonly type: 'lets-in'; readonly ends: readonly number[]; readonly parts: readonly number[] }
  | {
      readonly type: 'charges';
      readonly refrigerant: string;
      readonly mass: Quantity | null;
      readonly spaces: readonly Space[];
      readonly held: readonly Contents[];
      readonly phase: 'liquid' | 'vapour' | null;
      readonly purpose: 'charge' | 'adjust';
    }
  | {
      /** The charge, or the superheat of valves, trimmed while the machine runs. */
      readonly type: 'adjusts';
      readonly what: 'charge' | 'superheat';
      readonly parts: readonly number[];
      /** A difference, or what else the charge is judged by; null where nothing is said. */
      readonly to: Quantity | 'sight-glass clear' | 'level' | 'weight' | null;
      /** Steady running before the reading. */
      readonly after: Quantity | null;
    }
  | { readonly type: 'changes-oil'; readonly part: number; readonly held: Contents }
  | { readonly type: 'cleans'; readonly parts: readonly number[] }
  | {
      readonly type: 'starts';
      readonly mode: string | null;
      /** The machines that are meant; none where the whole system is. */
      readonly parts: readonly number[];
    }
  /** What the step is noted for, as the plant's marks have it ("leak-check system"). */
  | { readonly type: 'notes'; readonly what: readonly string[] }
  /** Readings that are taken or written down, by the words that the plan has for them. */
  | { readonly type: 'reads'; readonly of: readonly string[] }
  /** Swabs pulled through a line; `blocked` are the ends that none gets through. */
  | { readonly type: 'swabs'; readonly line: number; readonly blocked: readonly number[] }
  /** The charge is drawn into condenser or receiver by the compressor. */
  | { readonly type: 'pumps-down' }
  /** Driven valves that were to open and had neither power nor a tool. */
  | { readonly type: 'lacks-power'; readonly parts: readonly number[] }
  | { readonly type: 'powers'; readonly to: 'on' | 'controls' | 'locked-out' }
  | { readonly type: 'mounts'; readonly parts: readonly number[] }
  | { readonly type: 'unmounts'; readonly parts: readonly number[] }
  /** `grave` where it meets nothing at all of what it names. */
  | { readonly type: 'no-effect'; readonly why: string; readonly grave?: true; readonly parts?: readonly number[] };

/** Solvent or nitrogen that goes through an open line. */
export interface Flow {
  readonly type: 'flows';
  readonly medium: 'solvent' | 'nitrogen';
  /** The gas that the plan names for it; nitrogen unless it says another. */
  readonly gas: string;
  readonly purpose: 'blow-out' | 'flush' | 'purge';
  readonly line: number;
  /** The end that it is let in at, and whether that end stands open for it. */
  readonly inlet: number;
  readonly inletOpen: boolean;
  /** Every way out, with the chain of parts from the inlet to it. */
  readonly outlets: readonly { readonly opening: Opening; readonly chain: readonly number[] }[];
  /** All parts that the medium can get to. */
  readonly reached: readonly number[];
  /** Pa absolute; null where nothing is said. */
  readonly level: number | null;
  readonly time: Quantity | null;
  readonly container: boolean;
  readonly outdoors: boolean;
  /** Whether what came through was enough to take the solvent out for good, and why not. */
  readonly dries: boolean;
  readonly volumeChanges: number | null;
}
