import type { Plan } from '../plan/plan';
import type { Walk } from '../walk/walk';
import type { Figure } from './figure';

/** The figures of a plan: those of each step, in order, and the totals. */
export interface TakeOff {
  /** By entry of the walk. */
  readonly steps: readonly (readonly Figure[])[];
  readonly totals: readonly Figure[];
}

export function takeOff(_plan: Plan, walk: Walk): TakeOff {
  return { steps: walk.entries.map(() => []), totals: [] };
}
