import type { Plan } from './plan';

/** Recovery cylinders that a plan brings, by label and by the shop's name; null where it states no stock. */
export function cylinderNames(plan: Pick<Plan, 'bring'>): readonly string[] | null {
  const brought = plan.bring?.filter((each) => each.word === 'recovery');
  return brought ? brought.flatMap((each) => [...(each.label ? [each.label] : []), each.name]) : null;
}

/** Whether a name is that of a recovery cylinder. */
export const isCylinder = (plan: Pick<Plan, 'bring'>, name: string): boolean =>
  cylinderNames(plan)?.includes(name) ?? false;
