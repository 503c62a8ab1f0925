/** What a number measures. Points and differences are different kinds, so that one cannot stand for the other. */
export type Kind =
  | 'length'
  | 'altitude'
  | 'area'
  | 'volume'
  | 'mass'
  | 'time'
  | 'temperature'
  | 'temperature-difference'
  | 'pressure'
  | 'pressure-difference'
  | 'volume-flow'
  | 'mass-flow'
  | 'velocity'
  | 'density'
  | 'mass-per-length'
  | 'power'
  | 'energy'
  | 'share'
  | 'acid-number'
  | 'torque'
  | 'viscosity'
  | 'count'
  | 'enthalpy'
  | 'conductance'
  | 'charge-per-volume';

/**
 * A quantity in SI: m (length, and altitude over the sea, which may lie below it), m2, m3, kg, s, K, Pa (absolute for 'pressure'), m3/s, kg/s, m/s, kg/m3, kg/m, W, J, 1 (share),
 * mg KOH/g, N m, Pa s, 1 (count), J/kg, m3/s (conductance), kg/m3. `low` equals `high` unless it is a range.
 */
export interface Quantity {
  readonly kind: Kind;
  readonly low: number;
  readonly high: number;
}

export const exactly = (kind: Kind, value: number): Quantity => ({ kind, low: value, high: value });
export const between = (kind: Kind, low: number, high: number): Quantity => ({ kind, low, high });
export const isExact = (quantity: Quantity): boolean => quantity.low === quantity.high;
