import { gasConstant } from './data/refrigerants';
import type { Refrigerant } from './refrigerant';
import { dewTemperature, vapourViscosity } from './saturation';
import { inside, sumOver, toUnit } from './series';

export interface Vapour {
  /** kg/m3 */
  readonly density: number;
  /** J/kg, same zero as `vapourEnthalpy`. */
  readonly enthalpy: number;
  /** Pa s; within 1 % of the underlying equations for up to 60 K of superheat (R-744: 3 %). */
  readonly viscosity: number;
}

/** Rounding of a temperature found from a pressure, K, so that vapour at its dew point is vapour. */
const atDew = 1e-6;

/** Superheated vapour at a pressure (Pa absolute) and temperature (K); null outside the table or below the dew point. */
export function superheatedVapour(refrigerant: Refrigerant, pressure: number, temperature: number): Vapour | null {
  const dew = dewTemperature(refrigerant, pressure);
  if (dew === null) return null;
  const { Ts, dT, Z, h } = refrigerant.table.vap;
  const difference = temperature - dew;
  const superheat = difference < 0 && difference > -atDew ? 0 : difference;
  const saturated = vapourViscosity(refrigerant, dew);
  if (!inside(dew, Ts) || !inside(superheat, dT) || saturated === null) return null;
  const x = toUnit(dew, Ts);
  const y = toUnit(superheat, dT);
  const specific = gasConstant / refrigerant.molarMass;
  return {
    density: pressure / (sumOver(Z, x, y) * specific * temperature),
    enthalpy: sumOver(h, x, y),
    viscosity: (saturated * temperature) / dew,
  };
}
