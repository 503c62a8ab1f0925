import type { EquipmentKind } from '../reference/equipment-kinds';
import { child } from './bind';
import type { Plan } from './plan';

/** What the plan states the machine to be; null where it states nothing. */
export const statedEquipment = (plan: Plan): EquipmentKind | null =>
  (child(plan.system.bound?.block ?? [], 'equipment')?.values['kind'] as EquipmentKind | undefined) ?? null;
