import type { Quantity } from '../quantity';
import type { Entry } from '../walk/walk';
import type { Figure } from './figure';

/** What a step takes out of the van, or brings back to it. */
export type Draw =
  | { readonly of: 'nitrogen'; readonly volume: Quantity; readonly least: number | null; readonly figure: Figure }
  | {
      readonly of: 'solvent';
      readonly volume: Quantity;
      readonly solvent: string /** The line, by its index. */;
      readonly line: number;
      readonly figure: Figure;
    }
  | {
      readonly of: 'recovery';
      readonly refrigerant: string;
      /** Whether the charge itself comes out with it: how much that is follows from what was charged and recovered before. */
      readonly whole: boolean;
      /** What comes out; null where the plan does not say. */
      readonly mass: Quantity | null;
      readonly into: string | null;
    }
  | { readonly of: 'refrigerant'; readonly refrigerant: string; readonly mass: Quantity }
  | { readonly of: 'oil'; readonly oil: string; readonly volume: Quantity }
  | { readonly of: 'used-oil'; readonly oil: string; readonly volume: Quantity };

/** Gas that a step lets go where the crew works. */
export interface Release {
  readonly volume: Quantity;
  readonly time: Quantity | null;
  readonly figure: Figure;
}

export interface StepTakeOff {
  /** The figures of the step, what matters most first. */
  readonly figures: readonly Figure[];
  readonly draws: readonly Draw[];
  readonly releases: readonly Release[];
}

/** A draw of the whole job: what one time takes, and how often. */
export interface Counted {
  readonly entry: Entry;
  readonly draw: Draw;
  /** Least rounds, and most with all ways back that the plan allows. */
  readonly least: number;
  readonly most: number;
  /** Most rounds on the way on which every test passes: what the stock is held against, step by step. */
  readonly planned: number;
}
