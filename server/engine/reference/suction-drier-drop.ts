import type { Confidence } from './source';
import { fahrenheit, psi } from './table-units';

interface DropRow {
  /** Evaporating temperature, K. */
  readonly evaporating: number;
  /** Most pressure drop in psi, temporary and permanent, for R-22, R-404A and R-507A, and for R-134a. */
  readonly temporary: { readonly higher: number; readonly lower: number };
  readonly permanent: { readonly higher: number; readonly lower: number };
}

const rows: readonly DropRow[] = [
  { evaporating: fahrenheit(40), temporary: { higher: 8, lower: 6 }, permanent: { higher: 3, lower: 2 } },
  { evaporating: fahrenheit(20), temporary: { higher: 6, lower: 4 }, permanent: { higher: 2, lower: 1.5 } },
  { evaporating: fahrenheit(-20), temporary: { higher: 4, lower: 3 }, permanent: { higher: 1.5, lower: 1 } },
  { evaporating: fahrenheit(-40), temporary: { higher: 2, lower: 1 }, permanent: { higher: 0.5, lower: 0.5 } },
];

export const suctionDrierSource =
  'trade handbook table of suction-drier pressure drop, from memory; tables differ by publisher';
export const suctionDrierConfidence: Confidence = 'memory';

/** Refrigerants with the pressures of R-134a take the lower column. */
const lowerPressure: readonly string[] = ['R-134a', 'R-12', 'R-1234yf', 'R-513A', 'R-450A', 'R-1234ze(E)'];

/** Most drop over a suction drier in Pa, from the row at or next below the evaporating temperature (the stricter one). */
export const suctionDrierDrop = (refrigerant: string, evaporating: number, use: 'temporary' | 'permanent'): number => {
  const row = rows.find((one) => evaporating >= one.evaporating - 1e-9) ?? rows[rows.length - 1]!;
  return row[use][lowerPressure.includes(refrigerant) ? 'lower' : 'higher'] * psi;
};
