/** Kinds of equipment that rules tell apart: `transport` cools goods on the road, `vehicle` the people in a motor vehicle. */
export const equipmentKinds = [
  'air-conditioning',
  'vrf',
  'chiller',
  'self-contained',
  'condensing-unit',
  'supermarket',
  'cold-storage',
  'transport',
  'vehicle',
  'industrial',
] as const;
export type EquipmentKind = (typeof equipmentKinds)[number];
