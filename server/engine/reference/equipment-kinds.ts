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
