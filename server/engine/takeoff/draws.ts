import type { Quantity } from '../quantity';
import type { Figure } from './figure';

/** What a step takes out of the van, or brings back to it. */
export type Draw =
  | { readonly of: 'nitrogen'; readonly volume: Quantity; readonly least: number | null; readonly figure: Figure }
  | { readonly of: 'solvent'; readonly volume: Quantity; readonly solvent: string; readonly figure: Figure }
  | {
      readonly of: 'recovery';
      readonly refrigerant: string;
      readonly mass: Quantity | null;
      readonly into: string | null;
    }
  | { readonly of: 'refrigerant'; readonly refrigerant: string; readonly mass: Quantity }
  | { readonly of: 'oil'; readonly oil: string; readonly volume: Quantity };

export interface StepTakeOff {
  /** The figures of the step, what matters most first. */
  readonly figures: readonly Figure[];
  readonly draws: readonly Draw[];
}
