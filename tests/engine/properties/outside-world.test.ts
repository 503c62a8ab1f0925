import { describe, expect, it } from 'vitest';
import {
  bubblePressure,
  contentOf,
  dewPressure,
  liquidDensity,
  nitrogen,
  nitrogenMass,
  nitrogenStandardVolume,
  refrigerantNamed,
  standardPressure,
  standardTemperature,
  superheatedVapour,
  waterBoilingTemperature,
  waterSaturationPressure,
} from '../../../server/engine/properties/index';
import { trustIn } from '../../../server/engine/properties/trust';

const fahrenheit = (degrees: number): number => (degrees + 459.67) * (5 / 9);
const psi = 6894.757293168;
const cubicFoot = 0.028316846592;
const pound = 0.45359237;
const refrigerant = (name: string) => refrigerantNamed(name)!;

// Boiling points at 1 atm that ASHRAE Standard 34 prints, from memory (handbook 3.4, column "34"): degC, bubble and dew. They
// are not computed with the library behind the tables; blends whose pairs were set by these very points are left out.
// Allowed: 0.5 K, by which printed points and today's equations differ even for R-404A, whose equation is fitted to
// measurements; or the trust that the engine states for the pressure, at 4 % of pressure a kelvin, and a rounded 0.1 K.
describe('boiling points as published', () => {
  const published: readonly [string, number, number][] = [
    ['R-404A', -46.6, -45.8],
    ['R-407A', -45.2, -38.7],
    ['R-407C', -43.8, -36.7],
    ['R-407F', -46.1, -39.7],
    ['R-410A', -51.6, -51.5],
    ['R-417A', -38.0, -32.9],
    ['R-421A', -40.8, -35.5],
    ['R-422B', -40.5, -35.6],
    ['R-422D', -43.2, -38.4],
    ['R-427A', -43.0, -36.3],
    ['R-428A', -48.4, -47.5],
    ['R-434A', -45.0, -42.3],
    ['R-448A', -45.9, -39.8],
    ['R-449A', -46.0, -39.9],
    ['R-450A', -23.4, -22.8],
    ['R-452A', -47.0, -43.2],
    ['R-452B', -51.0, -50.3],
    ['R-454A', -48.4, -41.6],
    ['R-454B', -50.9, -50.0],
    ['R-454C', -46.0, -37.8],
    ['R-455A', -51.6, -39.1],
    ['R-466A', -51.7, -51.0],
    ['R-500', -33.6, -33.6],
    ['R-502', -45.3, -45.3],
    ['R-507A', -47.1, -47.1],
    ['R-508B', -87.4, -87.4],
    ['R-513A', -29.2, -29.2],
  ];
  it.each(published)('%s', (name, bubble, dew) => {
    const { boiling } = refrigerant(name);
    const allowed = Math.max(0.5, trustIn(refrigerant(name)).pressure / 0.04 + 0.1);
    expect(Math.abs(boiling!.bubble - 273.15 - bubble)).toBeLessThanOrEqual(allowed);
    // R-502 and the other four without a second figure are printed as azeotropes.
    if (dew !== bubble) expect(Math.abs(boiling!.dew - 273.15 - dew)).toBeLessThanOrEqual(allowed);
  });

  it('of pure refrigerants are where the saturation line crosses 1 atm', () => {
    // CRC Handbook of Chemistry and Physics, from memory: degC.
    for (const [name, celsius] of [
      ['R-22', -40.8],
      ['R-134a', -26.1],
      ['R-12', -29.8],
      ['R-290', -42.1],
      ['R-717', -33.3],
      ['R-600a', -11.7],
    ] as const) {
      expect(Math.abs(refrigerant(name).boiling!.bubble - 273.15 - celsius), name).toBeLessThan(0.15);
      expect(bubblePressure(refrigerant(name), refrigerant(name).boiling!.bubble)).toBeCloseTo(101325, -2);
    }
  });
});

describe('saturation pressures of public charts', () => {
  // WE-48 and the note under handbook 3.5, [M] from public charts: psig at 40 degF, within the 0.5 psi that charts differ by;
  // R-410A within the 1.3 psi by which the mixture model stands above the widely printed 224.5 at 77 degF.
  it.each([
    ['R-12', 40, 37.0, 0.5],
    ['R-22', 40, 68.5, 0.5],
    ['R-134a', 40, 35.05, 0.5],
    ['R-32', 40, 121.0, 0.5],
    ['R-410A', 40, 118.5, 0.5],
    ['R-410A', 77, 224.5, 1.3],
  ])('%s at %s degF', (name, degrees, gauge, allowed) => {
    const found = bubblePressure(refrigerant(name), fahrenheit(degrees))! / psi - 14.696;
    expect(Math.abs(found - gauge)).toBeLessThanOrEqual(allowed);
  });

  it('has the liquid density of R-22 at 77 degF that a recovery standard prints: 1.197 of water', () => {
    // AHRI guideline's specific gravity, handbook 3.5 [S:21]; water at 77 degF 997.05 kg/m3 (CRC Handbook).
    expect(Math.abs(liquidDensity(refrigerant('R-22'), fahrenheit(77))! / 997.05 - 1.197)).toBeLessThan(0.004);
  });

  it('has the suction vapour of WE-26', () => {
    // Handbook WE-26 [calc]: R-22, 40 degF evaporating, 10 degF of superheat: 1.477 lb/ft3, viscosity 1.21e-5 Pa s (WE-28).
    const r22 = refrigerant('R-22');
    const vapour = superheatedVapour(r22, dewPressure(r22, fahrenheit(40))!, fahrenheit(50))!;
    expect(vapour.density / (pound / cubicFoot)).toBeCloseTo(1.477, 2);
  });

  it('has the molar masses of WE-50', () => {
    // Handbook WE-50 [S:38]: g/mol.
    for (const [name, mass] of [
      ['R-410A', 72.59],
      ['R-407C', 86.2],
      ['R-404A', 97.6],
      ['R-448A', 86.28],
      ['R-454B', 62.61],
    ] as const) {
      expect(Math.abs(refrigerant(name).molarMass * 1000 - mass), name).toBeLessThan(0.05);
    }
  });
});

describe('nitrogen', () => {
  it('has 13.80 standard cubic feet in a pound', () => {
    // 13.80 scf/lb at 70 degF and 1 atm: handbook 6.1; it is also the gas trade's printed figure.
    expect(nitrogenStandardVolume(pound) / cubicFoot).toBeCloseTo(13.8, 2);
    expect(nitrogenMass(nitrogenStandardVolume(3))).toBeCloseTo(3, 12);
  });

  it('is an ideal gas at 1 atm to 0.1 %', () => {
    // Closed form: p M / (R T), with the molar mass 28.0134 g/mol of IUPAC.
    const ideal = (standardPressure * 0.0280134) / (8.314462618 * standardTemperature);
    expect(Math.abs(nitrogen.density(standardPressure, standardTemperature)! / ideal - 1)).toBeLessThan(1e-3);
  });

  it('has the densities of the reference tables', () => {
    // NIST Chemistry WebBook, isotherm 300 K (Span and others, 2000), from memory: kg/m3 at 1 and 10 MPa; sound to 0.1 %.
    expect(Math.abs(nitrogen.density(1e6, 300)! / 11.248 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(nitrogen.density(1e7, 300)! / 111.9 - 1)).toBeLessThan(3e-3);
  });

  it('has the compressibilities of handbook 6.1 and the content of WE-22', () => {
    for (const [gauge, z] of [
      [500, 0.995],
      [1000, 0.996],
      [2015, 1.016],
      [2265, 1.025],
      [2640, 1.041],
      [4500, 1.152],
    ] as const) {
      const pressure = gauge * psi + 101325;
      const ideal = (pressure * nitrogen.molarMass) / (8.314462618 * standardTemperature);
      expect(Math.abs(ideal / nitrogen.density(pressure, standardTemperature)! - z), `${gauge} psig`).toBeLessThan(
        0.001,
      );
    }
    // WE-22 [calc]: 29.5 L at 2000 psig and 70 degF hold 3980 L, 140.5 scf. WE-21: an ideal gas would fill 4013 L by gauge pressure.
    const mass = contentOf(nitrogen, 0.0295, 2000 * psi + 101325, standardTemperature)!;
    expect(Math.abs(nitrogenStandardVolume(mass) * 1000 - 3980)).toBeLessThan(5);
    expect(nitrogenStandardVolume(mass) / cubicFoot).toBeCloseTo(140.5, 0);
  });

  it('fills the trade sizes of cylinders', () => {
    // Handbook 6.2 [M sizes]: water volume ft3, psig, standard cubic feet.
    for (const [volume, gauge, content] of [
      [0.42, 2216, 63],
      [0.565, 2015, 77],
      [0.81, 2265, 123],
      [1.55, 2265, 234],
      [1.73, 2640, 300],
    ] as const) {
      const mass = contentOf(nitrogen, volume * cubicFoot, gauge * psi + 101325, standardTemperature)!;
      expect(Math.abs(nitrogenStandardVolume(mass) / cubicFoot - content), `${content} scf`).toBeLessThanOrEqual(1.2);
    }
  });

  it('has the viscosity of the reference tables', () => {
    // 17.9 uPa s at 300 K and 1 atm: CRC Handbook, table of gas viscosities.
    expect(nitrogen.viscosity(101325, 300)! * 1e6).toBeCloseTo(17.9, 0);
  });
});

describe('water', () => {
  it('has 31.8 mmHg at 30 degC', () => {
    // WE-24 [S:76].
    expect(Math.abs(waterSaturationPressure(303.15)! / 133.322 - 31.8)).toBeLessThan(0.1);
  });

  it('has about 5000 micron at 35 degF', () => {
    // Handbook 8.3 [S:74], "about 5000".
    expect(Math.abs(waterSaturationPressure(fahrenheit(35))! / 0.133322 - 5000)).toBeLessThan(200);
  });

  it('has 611.657 Pa at its triple point, over ice and over liquid alike', () => {
    // IAPWS R14-08 and SR1-86.
    expect(waterSaturationPressure(273.16)!).toBeCloseTo(611.657, 2);
    expect(waterSaturationPressure(273.15999999)!).toBeCloseTo(611.657, 2);
  });

  it('boils at 100 degC under 1 atm', () => {
    // 99.974 degC on the scale of 1990: CRC Handbook.
    expect(waterBoilingTemperature(101325)! - 273.15).toBeCloseTo(99.974, 2);
  });

  it('at 500 micron leaves ice at about -12 degF', () => {
    // Handbook 8.3.
    const boiling = waterBoilingTemperature(500 * 0.133322)!;
    expect((boiling * 9) / 5 - 459.67).toBeCloseTo(-12, 0);
  });
});
