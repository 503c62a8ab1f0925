import { statedEquipment } from '../plan/own-equipment';
import type { Plan } from '../plan/plan';
import { freelyVented, ventedWhereListed } from '../reference/venting-exempt';

export { statedEquipment };

/** The air conditioning of a motor vehicle: open compressor, hoses, weighed in, and a law of its own. */
export const isVehicle = (plan: Plan): boolean => statedEquipment(plan) === 'vehicle';

/** A machine on wheels: an engine drives its compressor, and no heater stands in its sump while it is parked. */
export const isMobile = (plan: Plan): boolean => isVehicle(plan) || statedEquipment(plan) === 'transport';

/** Whether a refrigerant may be let off outdoors: one of any machine, two of a sealed one that holds little of it (handbook 2.2). */
export const mayBeLetOff = (plan: Plan, refrigerant: string | null): boolean =>
  refrigerant === freelyVented ||
  (refrigerant !== null &&
    ventedWhereListed.includes(refrigerant) &&
    (statedEquipment(plan) === 'self-contained' || plan.system.smallAppliance !== null));

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

/** A compressor, the coil that it rejects heat by and the coil that takes it up, all new: no repair, a new machine. */
export function isNewMachine(plan: Plan): boolean {
  const isNew = (...kinds: readonly string[]): boolean => {
    const parts = plan.graph.parts.filter(
      (part) => kinds.includes(part.kind.kind) && !plan.graph.circuits[part.circuit]?.untouched,
    );
    return parts.length > 0 && parts.every((part) => part.standing === 'new' || part.standing === 'added');
  };
  return (
    isNew('compressor') && isNew('condenser', 'evaporator', 'coaxial-coil', 'plate-exchanger', 'microchannel-coil')
  );
}

/**
 * Comfort cooling with no receiver holds about 2 to 4 lb for each 12,000 Btu/h; refrigeration with receivers and long lines
 * 4 to 30 (common practice, no source). A charge several times off is a slip of the charge or of the capacity. kg/W.
 */
const perTon = (least: number, most: number) => ({
  low: (least * 0.45359237) / 3516.85,
  high: (most * 0.45359237) / 3516.85,
});
const comfortProportion = perTon(0.7, 12);
const otherProportion = perTon(0.4, 200);

/** Between what the charge of a machine of this kind lies for each watt, kg/W. */
export const chargePerCapacity = (plan: Plan): { readonly low: number; readonly high: number } =>
  isComfort(plan) ? comfortProportion : otherProportion;

/** Whether no machine of this capacity has this charge: then neither figure is a measure of anything else. */
export function outOfProportion(plan: Plan): boolean {
  const { charge, capacity } = plan.system;
  if (!charge || !capacity) return false;
  const share = charge.quantity.low / capacity.quantity.high;
  const { low, high } = chargePerCapacity(plan);
  return share < low || share > high;
}
