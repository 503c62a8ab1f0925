import type { CircuitSpec, Graph } from '../circuit/graph';
import type { Finding } from '../finding';
import type { Quantity } from '../quantity';
import type { Bound } from './bind';
import type { Span } from './read-terms';
import type { Declaration, Scope } from './scope';
import type { Departure, Step } from './step';
import type { Amount } from './term';

export type JobKind = 'changeout' | 'conversion' | 'burnout' | 'repair' | 'new';

/** A quantity of the plan, with the place where it is stated. */
export interface Stated {
  readonly quantity: Quantity;
  readonly amount: Amount;
  readonly bound: Bound;
  readonly span: Span;
  /** The maker's sheet or the like, if it is cited. */
  readonly per: string | null;
}

export interface Change<T> {
  readonly before: T | null;
  readonly after: T | null;
}

export interface CrewMember {
  readonly role: string;
  readonly number: number;
  readonly certificates: readonly string[];
}

export interface BringItem {
  readonly word: string;
  readonly label: string | null;
  readonly number: number;
  readonly name: string;
  readonly declaration: Declaration | null;
  readonly bound: Bound;
}

export interface Acceptance {
  readonly check: string;
  readonly reason: string | null;
  readonly bound: Bound;
  readonly file: string;
  /** The step in whose block it stands; null for the whole plan. */
  readonly step: Step | null;
}

/** One job, put together: every fact typed, every name found, every step in its place. */
export interface Plan extends Head {
  /** All that does not hang on the steps; the same object while nothing in it changes. */
  readonly head: Head;
  readonly standard: Declaration | null;
  readonly followedRevision: number | null;
  readonly steps: readonly Step[];
  readonly departures: readonly Departure[];
  readonly acceptances: readonly Acceptance[];
  /** What could not be put together: names not found, values that contradict each other. */
  readonly findings: readonly Finding[];
}

/** A job without its steps: site, system, circuit, stock. */
export interface Head {
  readonly file: string;
  readonly declaration: Declaration;
  readonly name: string;
  readonly title: string;
  readonly revision: number | null;
  /** As the plan states it. */
  readonly date: string | null;
  /** The day that rules go by: the plan's date, or today where it states none; null where nobody said what today is. */
  readonly day: string | null;
  readonly kinds: readonly JobKind[];
  readonly scope: Scope;
  readonly rules: readonly Declaration[];
  readonly site: {
    /** Pa. */
    readonly atmosphere: number;
    readonly altitude: Stated | null;
    readonly outdoors: Stated | null;
    readonly indoors: Stated | null;
    readonly wetBulb: Stated | null;
    readonly workSpace: {
      readonly where: string;
      readonly volume: Stated | null;
      readonly ventilation: Stated | null;
      readonly open: boolean;
      readonly bound: Bound;
    } | null;
    readonly smallestRoom: Stated | null;
    readonly lowestTube: Stated | null;
  };
  readonly crew: readonly CrewMember[];
  readonly system: {
    readonly refrigerant: Change<string>;
    readonly oil: Change<string>;
    readonly recoverCharge: Stated | null;
    readonly charge: Stated | null;
    readonly chargeCovers: Stated | null;
    readonly lineAllowance: Stated | null;
    readonly capacity: Stated | null;
    readonly leastCapacity: Stated | null;
    readonly subcooling: Stated | null;
    readonly superheat: Stated | null;
    readonly designLow: Stated | null;
    readonly designHigh: Stated | null;
    readonly evaporating: Stated | null;
    readonly condensing: Stated | null;
    readonly velocityAccepted: string | null;
    readonly rated: Stated | null;
    readonly smallAppliance: 'runs' | 'dead' | null;
    readonly bound: Bound | null;
  };
  readonly circuits: readonly CircuitSpec[];
  readonly graph: Graph;
  /** The statement of each part, by its index in the graph. */
  readonly partStatements: readonly Bound[];
  readonly parameters: {
    readonly testPressure: Stated | null;
    readonly solvent: Declaration | null;
  };
  /** Null where the plan states no stock. */
  readonly bring: readonly BringItem[] | null;
  readonly notes: readonly string[];
  /** Saturation pressure of a refrigerant between the site's temperatures, Pa absolute; null where it is not known. */
  startPressure(refrigerant: string): readonly [low: number, high: number] | null;
  readonly headFindings: readonly Finding[];
}
