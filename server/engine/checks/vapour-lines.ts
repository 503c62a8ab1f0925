import type { Part } from '../circuit/graph';
import { child } from '../plan/bind';
import type { Plan } from '../plan/plan';
import { refrigerantNamed } from '../properties';
import { fahrenheit } from '../reference/table-units';
import { type Duty, dutyOf } from '../takeoff/cycle';

/** What flows through the lines that vapour goes back in, for the checks of their size. */

/** Working temperatures where the plan states none: comfort cooling (common practice, no source). */
const usual = { evaporating: fahrenheit(40), condensing: fahrenheit(105), superheat: 10 / 1.8, subcooling: 10 / 1.8 };

/** Where vapour evaporates in cooling: stated, or the usual of comfort cooling, K. */
export const evaporatingOf = (plan: Plan): number => plan.system.evaporating?.quantity.low ?? usual.evaporating;

/** What a kilogram of the new refrigerant does at the plan's temperatures; null where the tables do not reach. */
export const dutyWithNew = (plan: Plan): Duty | null => dutyWith(plan, plan.system.refrigerant.after ?? '');

/** The same of any refrigerant. */
export function dutyWith(plan: Plan, name: string): Duty | null {
  const { system } = plan;
  const refrigerant = refrigerantNamed(name);
  if (!refrigerant) return null;
  return dutyOf(refrigerant, {
    evaporating: evaporatingOf(plan),
    condensing: system.condensing?.quantity.low ?? usual.condensing,
    superheat: system.superheat?.quantity.low ?? usual.superheat,
    subcooling: system.subcooling?.quantity.low ?? usual.subcooling,
  });
}

/** Whether the maker's table answers for the size of the line. */
export const isAccepted = (plan: Plan, part: Part): boolean =>
  part.properties.per?.['rise'] !== undefined ||
  part.properties.per?.['tube'] !== undefined ||
  child(plan.partStatements[part.index]?.block ?? [], 'velocity') !== undefined;
