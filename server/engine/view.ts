import type { Finding } from './finding';
import type { Plan } from './plan/plan';
import type { TakeOff } from './takeoff/take-off';
import type { Walk } from './walk/walk';

/** A plan with all that follows from it; each part is made when it is first asked for. */
export interface PlanView {
  readonly plan: Plan;
  readonly walk: Walk;
  readonly takeOff: TakeOff;
  readonly findings: readonly Finding[];
  /** Those of them that names and single steps give rise to; they cost little after an edit. */
  readonly stepFindings: readonly Finding[];
  /** Those that words and names give, before anything is walked. */
  readonly wordFindings: readonly Finding[];
}
