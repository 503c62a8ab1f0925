import { between, show } from '../quantity/index';
import type { Refrigerant } from './refrigerant';
import { inside, type Series, sumAt, temperatureWhere, toUnit } from './series';
import type { FluidTable } from './tables';

// Everything here is of saturated refrigerant, K, Pa absolute, kg/m3, J/kg, Pa s, and null outside the tables: a figure
// is never extrapolated. Subcooled liquid has nearly the properties of saturated liquid at its own temperature: with 5 to
// 15 K of subcooling below 45 degC its density reads low by 0.1 to 0.3 % (R-22, R-134a, R-290), 0.4 to 1.1 % (R-32, R-125).

function at(refrigerant: Refrigerant, series: Series, temperature: number): number | null {
  const domain = refrigerant.temperatureRange;
  return inside(temperature, domain) ? sumAt(series, toUnit(temperature, domain)) : null;
}

function exponentialAt(refrigerant: Refrigerant, series: Series, temperature: number): number | null {
  const domain = refrigerant.temperatureRange;
  return inside(temperature, domain) ? Math.exp(sumAt(series, toUnit(temperature, domain))) : null;
}

const bubbleLine = (table: FluidTable): Series => table.sat.lnpB;
const dewLine = (table: FluidTable): Series => table.sat.lnpD ?? table.sat.lnpB;

/** Pressure at which liquid of the composition charged begins to boil. Subcooling is judged by this line. */
export const bubblePressure = (refrigerant: Refrigerant, temperature: number): number | null =>
  exponentialAt(refrigerant, bubbleLine(refrigerant.table), temperature);

/** Pressure at which vapour of the composition charged begins to condense. Superheat is judged by this line. */
export const dewPressure = (refrigerant: Refrigerant, temperature: number): number | null =>
  exponentialAt(refrigerant, dewLine(refrigerant.table), temperature);

/** ln p at both ends of a line, found once. */
const ends = new WeakMap<Series, readonly [number, number]>();

function endsOf(line: Series): readonly [number, number] {
  let found = ends.get(line);
  if (found === undefined) {
    found = [sumAt(line, -1), sumAt(line, 1)];
    ends.set(line, found);
  }
  return found;
}

function temperatureOn(refrigerant: Refrigerant, line: Series, pressure: number): number | null {
  const target = Math.log(pressure);
  const [low, high] = endsOf(line);
  // The end itself counts as inside, to within the rounding of a logarithm.
  if (!(target >= low - 1e-12 && target <= high + 1e-12)) return null;
  return temperatureWhere(line, refrigerant.temperatureRange, target, low, high);
}

/** Temperature at which liquid begins to boil under a pressure. */
export const bubbleTemperature = (refrigerant: Refrigerant, pressure: number): number | null =>
  temperatureOn(refrigerant, bubbleLine(refrigerant.table), pressure);

/** Temperature at which vapour begins to condense under a pressure. */
export const dewTemperature = (refrigerant: Refrigerant, pressure: number): number | null =>
  temperatureOn(refrigerant, dewLine(refrigerant.table), pressure);

export const liquidDensity = (refrigerant: Refrigerant, temperature: number): number | null =>
  at(refrigerant, refrigerant.table.sat.rhoL, temperature);

export const vapourDensity = (refrigerant: Refrigerant, temperature: number): number | null =>
  exponentialAt(refrigerant, refrigerant.table.sat.lnrhoV, temperature);

/** Liquid at the bubble point at 0 degC is 200,000 J/kg; only differences within one refrigerant mean anything. */
export const liquidEnthalpy = (refrigerant: Refrigerant, temperature: number): number | null =>
  at(refrigerant, refrigerant.table.sat.hL, temperature);

/** Vapour at the dew point, same zero as the liquid's. */
export const vapourEnthalpy = (refrigerant: Refrigerant, temperature: number): number | null =>
  at(refrigerant, refrigerant.table.sat.hV, temperature);

/** See `trustIn`: of some refrigerants a viscosity is good for pressure drop only. */
export const liquidViscosity = (refrigerant: Refrigerant, temperature: number): number | null =>
  exponentialAt(refrigerant, refrigerant.table.sat.lnmuL, temperature);

export const vapourViscosity = (refrigerant: Refrigerant, temperature: number): number | null =>
  exponentialAt(refrigerant, refrigerant.table.sat.lnmuV, temperature);

/** Dew less bubble temperature under a pressure, K. */
export function glideAt(refrigerant: Refrigerant, pressure: number): number | null {
  const dew = dewTemperature(refrigerant, pressure);
  const bubble = bubbleTemperature(refrigerant, pressure);
  return dew === null || bubble === null ? null : dew - bubble;
}

/** Heat taken up by evaporation at one pressure, J/kg: from liquid at its bubble point to vapour at its dew point. */
export function latentHeat(refrigerant: Refrigerant, pressure: number): number | null {
  const dew = dewTemperature(refrigerant, pressure);
  const bubble = bubbleTemperature(refrigerant, pressure);
  if (dew === null || bubble === null) return null;
  const vapour = vapourEnthalpy(refrigerant, dew);
  const liquid = liquidEnthalpy(refrigerant, bubble);
  return vapour === null || liquid === null ? null : vapour - liquid;
}

/**
 * Says why a figure is null: the range of the table that was asked, in words and in both systems.
 * `atmosphere` in Pa, for gauge readings.
 */
export function outside(
  refrigerant: Refrigerant,
  what: 'temperature' | 'bubble' | 'dew' | 'superheat',
  atmosphere?: number,
): string {
  const { name, temperatureRange, vapourRange, table } = refrigerant;
  const level = atmosphere === undefined ? {} : { atmosphere };
  const inBoth = { system: 'both', ...level } as const;
  if (what === 'temperature') {
    return `The tables of ${name} span ${show(between('temperature', ...temperatureRange), inBoth)}; nothing is guessed beyond.`;
  }
  if (what === 'superheat') {
    const dew = show(between('temperature', ...vapourRange.dewTemperature), inBoth);
    const above = show(between('temperature-difference', ...vapourRange.superheat), inBoth);
    return `The table of superheated ${name} spans dew temperatures of ${dew} and ${above} above them; nothing is guessed beyond.`;
  }
  const [low, high] = endsOf(what === 'bubble' ? bubbleLine(table) : dewLine(table));
  const range = between('pressure', Math.exp(low), Math.exp(high));
  const absolute = show(range, { ...inBoth, as: 'psia' });
  return `The ${what} line of ${name} spans ${absolute}; nothing is guessed beyond.`;
}
