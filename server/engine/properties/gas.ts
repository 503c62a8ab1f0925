import gases from './data/gases.json';
import { gasConstant } from './data/refrigerants';
import { type Domain, inside, type Surface, sumOver, toUnit } from './series';

interface GasTable {
  readonly M: number;
  readonly T: Domain;
  readonly p: Domain;
  readonly Z: Surface;
  readonly h: Surface;
  readonly s1: Surface;
  readonly mu: Surface;
}

/** A gas by its tables: pressure in Pa absolute, temperature in K; null outside the tables. */
export interface Gas {
  readonly name: string;
  /** kg/mol */
  readonly molarMass: number;
  readonly temperatureRange: Domain;
  readonly pressureRange: Domain;
  /** kg/m3 */
  density(pressure: number, temperature: number): number | null;
  /** J/kg, zero at 0 degC and 1 atm. */
  enthalpy(pressure: number, temperature: number): number | null;
  /** J/(kg K), zero at 0 degC and 1 atm. */
  entropy(pressure: number, temperature: number): number | null;
  /** Pa s */
  viscosity(pressure: number, temperature: number): number | null;
  /** The pressure that a density makes at a temperature, Pa absolute. */
  pressure(density: number, temperature: number): number | null;
}

/** 1 atm, Pa: the pressure at which the entropies of the tables are zero. */
const atmosphere = 101325;

function gasOf(name: string, table: GasTable): Gas {
  const specific = gasConstant / table.M;
  const on = (surface: Surface, pressure: number, temperature: number): number | null =>
    inside(temperature, table.T) && inside(pressure, table.p)
      ? sumOver(surface, toUnit(temperature, table.T), toUnit(pressure, table.p))
      : null;
  const density = (pressure: number, temperature: number): number | null => {
    const compressibility = on(table.Z, pressure, temperature);
    return compressibility === null ? null : pressure / (compressibility * specific * temperature);
  };
  return {
    name,
    molarMass: table.M,
    temperatureRange: table.T,
    pressureRange: table.p,
    density,
    enthalpy: (pressure, temperature) => on(table.h, pressure, temperature),
    entropy: (pressure, temperature) => {
      const part = on(table.s1, pressure, temperature);
      return part === null ? null : part - specific * Math.log(pressure / atmosphere);
    },
    viscosity: (pressure, temperature) => {
      const micro = on(table.mu, pressure, temperature);
      return micro === null ? null : micro * 1e-6;
    },
    pressure: (wanted, temperature) => pressureWhere(density, table.p, wanted, temperature),
  };
}

/** Bisection on the tables' pressures, along which density rises: 60 halvings leave less than a millionth of a Pa. */
function pressureWhere(
  density: (pressure: number, temperature: number) => number | null,
  range: Domain,
  wanted: number,
  temperature: number,
): number | null {
  let [low, high] = range;
  const least = density(low, temperature);
  const most = density(high, temperature);
  if (least === null || most === null || !(wanted >= least && wanted <= most)) return null;
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2;
    if (density(middle, temperature)! < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

const { Nitrogen, Air } = gases.fluids as unknown as { Nitrogen: GasTable; Air: GasTable };

/** -35 to 75 degC, 1 kPa to 35 MPa. */
export const nitrogen: Gas = gasOf('nitrogen', Nitrogen);
/** -35 to 75 degC, 1 kPa to 3 MPa; dry. */
export const air: Gas = gasOf('air', Air);

/** Standard state of the trade's cubic foot of gas: 70 degF, K, and 1 atm, Pa. */
export const standardTemperature = (70 + 459.67) * (5 / 9);
export const standardPressure = atmosphere;
const standardDensity = nitrogen.density(standardPressure, standardTemperature)!;

/** The volume that a mass (kg) of nitrogen takes at 70 degF and 1 atm, m3: shown as scf. */
export const nitrogenStandardVolume = (mass: number): number => mass / standardDensity;

/** The mass (kg) of a standard volume (m3 at 70 degF and 1 atm) of nitrogen. */
export const nitrogenMass = (standardVolume: number): number => standardVolume * standardDensity;

/** Mass (kg) of a gas in a vessel of a water volume (m3) at a pressure (Pa absolute) and temperature (K). */
export function contentOf(gas: Gas, waterVolume: number, pressure: number, temperature: number): number | null {
  const density = gas.density(pressure, temperature);
  return density === null ? null : density * waterVolume;
}
