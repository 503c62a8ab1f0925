import { describe, expect, it } from 'vitest';
import {
  atmosphereAt,
  isProblem,
  type Kind,
  type LiteralProblem,
  readLiteral,
  standardAtmosphere,
  toQuantity,
  units,
  unitWords,
} from '../../../server/engine/quantity/index';

function convert(text: string, kind: Kind, atmosphere = standardAtmosphere) {
  const literal = readLiteral(text);
  return isProblem(literal) ? literal : toQuantity(literal, kind, atmosphere);
}

function ends(text: string, kind: Kind, atmosphere?: number): [number, number] {
  const quantity = convert(text, kind, atmosphere);
  if (isProblem(quantity)) throw new Error(`${text}: ${quantity.message}`);
  return [quantity.low, quantity.high];
}

function fault(text: string, kind: Kind, atmosphere?: number): LiteralProblem {
  const quantity = convert(text, kind, atmosphere);
  if (!isProblem(quantity)) throw new Error(`${text} was taken as ${kind} ${quantity.low}`);
  return quantity;
}

describe('conversion to SI', () => {
  // Factors: NIST Special Publication 811, appendix B.8, printed to seven digits there, unless another source stands behind.
  const factors: readonly [string, Kind, number][] = [
    ['1 in', 'length', 0.0254],
    ['1 ft', 'length', 0.3048],
    ['1 yd', 'length', 0.9144],
    ['1 in2', 'area', 6.4516e-4],
    ['1 ft2', 'area', 9.290304e-2],
    ['1 fl-oz', 'volume', 2.957353e-5],
    ['1 pt', 'volume', 4.731765e-4],
    ['1 qt', 'volume', 9.463529e-4],
    ['1 gal', 'volume', 3.785412e-3],
    ['1 in3', 'volume', 1.638706e-5],
    ['1 ft3', 'volume', 2.831685e-2],
    ['1 oz', 'mass', 2.834952e-2],
    ['1 lb', 'mass', 4.535924e-1],
    ['1 psi', 'pressure-difference', 6.894757e3],
    ['1 inHg', 'pressure-difference', 3.386389e3],
    ['1 inH2O', 'pressure-difference', 2.490889e2],
    ['1 torr', 'pressure-difference', 1.333224e2],
    ['1 micron', 'pressure', 1.333224e-1],
    ['1 bar', 'pressure-difference', 1e5],
    ['1 cfm', 'volume-flow', 4.719474e-4],
    ['1 gal/min', 'volume-flow', 6.30902e-5],
    ['1 lb/min', 'mass-flow', 7.559873e-3],
    ['1 lb/h', 'mass-flow', 1.259979e-4],
    ['1 ft/min', 'velocity', 5.08e-3],
    ['1 lb/ft3', 'density', 1.601846e1],
    ['1 lb/gal', 'density', 1.198264e2],
    ['1 lb/ft', 'mass-per-length', 1.488164],
    ['1 Btu/h', 'power', 2.930711e-1],
    ['1 hp', 'power', 7.456999e2],
    ['1 Btu', 'energy', 1.055056e3],
    ['1 ft-lbf', 'energy', 1.355818],
    ['1 Btu/lb', 'enthalpy', 2.326e3],
    ['1 in-lb', 'torque', 1.129848e-1],
    ['1 ft-lb', 'torque', 1.355818],
    ['1 cP', 'viscosity', 1e-3],
    // A thousandth of the pound per cubic foot above.
    ['1 lb/Mcf', 'charge-per-volume', 1.601846e-2],
    ['32 degF', 'temperature', 273.15],
    ['9 Δ°F', 'temperature-difference', 5],
    ['5 K', 'temperature-difference', 5],
    ['300 K', 'temperature', 300],
  ];
  it.each(factors)('%s as %s', (text, kind, expected) => {
    const [low, high] = ends(text, kind);
    expect(Math.abs(low / expected - 1)).toBeLessThan(1.5e-6);
    expect(high).toBe(low);
  });

  it('counts gauge and vacuum readings from the atmosphere of the site', () => {
    // 5,000 ft: 84.31 kPa. Source: US Standard Atmosphere 1976, table of geopotential altitude.
    const high = atmosphereAt(1524);
    expect(high).toBeCloseTo(84307, -1);
    expect(ends('0 psig', 'pressure', high)[0]).toBe(high);
    expect(ends('100 psig', 'pressure', high)[0] - high).toBeCloseTo(100 * 6894.757, 0);
    expect(ends('10 inHg', 'pressure', high)[0]).toBeCloseTo(high - 33863.89, 2);
    expect(ends('100 psia', 'pressure', high)).toEqual(ends('100 psia', 'pressure'));
    expect(ends('500 micron', 'pressure', high)).toEqual(ends('500 micron', 'pressure'));
    // The deeper reading of a vacuum is the lower pressure.
    const [low, up] = ends('10..15 inHg', 'pressure');
    expect(low).toBeLessThan(up);
  });

  const wrong: readonly [string, Kind, LiteralProblem['problem'], readonly string[]][] = [
    ['100 psi', 'pressure', 'ambiguous-reference', ['100 psig', '100 psia']],
    ['10..20 kPa', 'pressure', 'ambiguous-reference', ['10..20 kPa gauge', '10..20 kPa absolute']],
    ['50 Pa', 'pressure', 'ambiguous-reference', ['50 Pa absolute']],
    ['5 psig', 'pressure-difference', 'wrong-kind', ['5 psi']],
    ['690 kPa gauge', 'pressure-difference', 'wrong-kind', ['690 kPa']],
    ['8 degF', 'temperature-difference', 'wrong-kind', ['8 Δ°F']],
    ['8 °C', 'temperature-difference', 'wrong-kind', ['8 Δ°C']],
    ['8 deltaF', 'temperature', 'wrong-kind', ['8 degF']],
    ['5 ft', 'mass', 'wrong-kind', []],
    ['31 inHg', 'pressure', 'impossible', []],
    ['-20 psig', 'pressure', 'impossible', []],
    ['-3 inHg', 'pressure', 'impossible', []],
    ['-1 psia', 'pressure', 'impossible', []],
    ['-460 degF', 'temperature', 'impossible', []],
    ['-300 degC', 'temperature', 'impossible', []],
    ['-3 ft', 'length', 'impossible', []],
    ['-3 lb 4 oz', 'mass', 'impossible', []],
  ];
  it.each(wrong)('%s is no %s', (text, kind, problem, suggestions) => {
    const found = fault(text, kind);
    expect([found.problem, found.suggestions]).toEqual([problem, suggestions]);
    for (const suggestion of suggestions) ends(suggestion, kind);
  });

  it('takes a vacuum that is possible at sea level and not on a mountain', () => {
    expect(isProblem(convert('28 inHg', 'pressure'))).toBe(false);
    expect(fault('28 inHg', 'pressure', atmosphereAt(1524)).message).toContain('24.9 inHg');
    expect(ends('-5 Δ°F', 'temperature-difference')[0]).toBeCloseTo(-25 / 9, 12);
    expect(ends('-10 psig', 'pressure')[0]).toBeGreaterThan(0);
  });
});

describe('the atmosphere', () => {
  // Source: ISO 2533:1975, table of pressure over geopotential altitude: Pa.
  it.each([
    [0, 101325],
    [1000, 89874.6],
    [2000, 79495.2],
    [3000, 70108.5],
    [5000, 54019.9],
    [11000, 22632.0],
  ])('at %s m', (altitude, expected) => {
    expect(Math.abs(atmosphereAt(altitude) / expected - 1)).toBeLessThan(2e-5);
  });

  it('stays a pressure whatever it is asked', () => {
    for (const altitude of [-1e9, 1e9, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NaN]) {
      expect(atmosphereAt(altitude)).toBeGreaterThan(20000);
      expect(atmosphereAt(altitude)).toBeLessThan(200000);
    }
  });
});

describe('the units', () => {
  it('are spelled in one way each', () => {
    expect(new Set(unitWords).size).toBe(unitWords.length);
  });

  it('have examples that are read as their first kind', () => {
    for (const unit of units) {
      if (unit.example === undefined) continue;
      expect(ends(unit.example, unit.kinds[0]!)[0], unit.example).toBeGreaterThan(0);
    }
  });
});
