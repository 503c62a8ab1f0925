import { bubblePressure, dewPressure, type Refrigerant } from '../properties';

export interface StripRow {
  /** K */
  readonly temperature: number;
  /** Pa absolute: for subcooling. */
  readonly bubble: number;
  /** Pa absolute: for superheat. */
  readonly dew: number;
}

/** More rows than this are no strip: the step is then taken wider by the caller. */
const mostRows = 400;

/**
 * Rows of a pressure-temperature strip from `low` to `high` (K) in steps of `step` K; rows beyond the tables are left
 * out. Empty when the range is none.
 */
export const pressureStrip = (
  refrigerant: Refrigerant,
  low: number,
  high: number,
  step: number,
): readonly StripRow[] => {
  const count = Math.floor((high - low) / step + 1e-9) + 1;
  if (!(step > 0) || !(count >= 1) || count > mostRows) return [];
  const rows: StripRow[] = [];
  for (let index = 0; index < count; index++) {
    const temperature = low + index * step;
    const bubble = bubblePressure(refrigerant, temperature);
    const dew = dewPressure(refrigerant, temperature);
    if (bubble !== null && dew !== null) rows.push({ temperature, bubble, dew });
  }
  return rows;
};
