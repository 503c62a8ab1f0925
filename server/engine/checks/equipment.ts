import { child } from '../plan/bind';
import type { Plan } from '../plan/plan';

/** Kinds of equipment that rules tell apart. */
export const equipmentKinds = [
  'air-conditioning',
  'vrf',
  'chiller',
  'self-contained',
  'condensing-unit',
  'supermarket',
  'cold-storage',
  'transport',
  'industrial',
] as const;
export type EquipmentKind = (typeof equipmentKinds)[number];

/** What the plan states the machine to be; null where it states nothing. */
export const statedEquipment = (plan: Plan): EquipmentKind | null =>
  (child(plan.system.bound?.block ?? [], 'equipment')?.values['kind'] as EquipmentKind | undefined) ?? null;

/** Refrigeration works below freezing, or has parts that comfort cooling has not. */
const ofRefrigeration: ReadonlySet<string> = new Set(['solenoid', 'evaporator-pressure-regulator', 'receiver']);

/** Comfort cooling: stated, or told by its parts and temperatures; other dates and charges hold for refrigeration. */
export function isComfort(plan: Plan): boolean {
  const stated = statedEquipment(plan);
  if (stated !== null) return stated === 'air-conditioning' || stated === 'vrf';
  return (
    (plan.system.evaporating === null || plan.system.evaporating.quantity.low > 273.15) &&
    !plan.graph.parts.some((part) => ofRefrigeration.has(part.kind.kind))
  );
}
