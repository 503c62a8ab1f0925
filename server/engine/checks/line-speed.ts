import type { Part } from '../circuit/graph';
import { isVapourLine } from '../circuit/kinds';
import type { Plan } from '../plan/plan';
import { feetPerMinute } from '../reference/table-units';
import { suctionHorizontalLeast } from '../reference/velocity-limits';
import { loadsOf } from '../takeoff/lines';
import { outOfProportion } from './equipment';
import { dutyWithNew, isAccepted } from './vapour-lines';

/** How fast liquid and vapour go through lines at full load, for the checks of their size. */

/** The limits hang on assumed temperatures: only what is clearly beyond them is told (common practice, no source). */
const margin = 1.25;
/** Nobody lays a liquid line so wide that its liquid creeps (common practice, no source), m/s. */
export const liquidLeast = 25 * feetPerMinute;
/** Half as fast again as the usual most, which is from memory; m/s. */
export const liquidMostEver = 450 * feetPerMinute;
export const vapourLeast = suctionHorizontalLeast.quantity.low / margin;

/** Velocity in m/s and the load in W of a liquid or vapour line; null where the plan does not say what flows, cites a table, or its capacity is out of all proportion. */
export function speedIn(plan: Plan, line: Part): { readonly velocity: number; readonly load: number } | null {
  const { tube } = line.properties;
  const liquid = line.kind.kind === 'liquid-line';
  if (!tube || line.standing === 'removed' || !(liquid || isVapourLine(line.kind))) return null;
  if (outOfProportion(plan)) return null;
  if (plan.system.velocityAccepted !== null || isAccepted(plan, line) || hasTwin(plan, line)) return null;
  const loads = loadsOf(plan, line, [line]);
  const duty = dutyWithNew(plan);
  if (!loads || !duty) return null;
  const density = liquid ? duty.liquidDensity : duty.suctionDensity;
  return { velocity: loads.full / duty.effect / density / ((Math.PI / 4) * tube.bore ** 2), load: loads.full };
}

/** Whether a liquid line is so wide that its size must be a slip. */
export const isTooWide = (plan: Plan, line: Part): boolean =>
  (speedIn(plan, line)?.velocity ?? liquidLeast) < liquidLeast;

/** Of two pipes side by side neither takes all. */
function hasTwin(plan: Plan, line: Part): boolean {
  const joints = ({ ends }: Part): string => ends.map((end) => plan.graph.ends[end]!.joint).join();
  return plan.graph.parts.some((each) => each !== line && joints(each) === joints(line));
}
