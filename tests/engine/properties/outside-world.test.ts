import { describe, expect, it } from 'vitest';
import {
  bubblePressure,
  bubbleTemperature,
  contentOf,
  dewPressure,
  dewTemperature,
  glideAt,
  latentHeat,
  liquidDensity,
  liquidViscosity,
  nitrogen,
  nitrogenMass,
  nitrogenStandardVolume,
  refrigerantNamed,
  standardPressure,
  standardTemperature,
  superheatedVapour,
  vapourViscosity,
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

describe('pure refrigerants as printed', () => {
  // Boiling point at 1 atm, degC (ASHRAE Standard 34, from memory); heat of evaporation there, kJ/kg, and density of the liquid at
  // 25 degC, kg/m3 (CRC Handbook and the NIST Chemistry WebBook, from memory). Allowed: 0.2 K, 1.5 % and 0.4 %, by which printings
  // of different years differ. Null: no figure at hand.
  const printed: readonly (readonly [string, number, number | null, number | null])[] = [
    ['R-11', 23.7, 181, 1476],
    ['R-12', -29.8, 166.2, 1311],
    ['R-13', -81.5, null, null],
    ['R-22', -40.8, 233.8, 1191],
    ['R-23', -82.0, 239, null],
    ['R-32', -51.7, 382, 961],
    ['R-115', -39.2, null, null],
    ['R-123', 27.8, 170.2, 1464],
    ['R-124', -12.0, null, 1357],
    ['R-125', -48.1, 164.1, 1190],
    ['R-134a', -26.1, 217.0, 1207],
    ['R-142b', -9.1, null, 1108],
    ['R-143a', -47.2, 226.6, 931],
    ['R-152a', -24.0, 329.9, 900],
    ['R-227ea', -16.3, 131.7, 1388],
    ['R-236fa', -1.4, null, 1360],
    ['R-245fa', 15.1, 196.9, 1339],
    ['R-290', -42.1, 425.6, 492],
    ['R-600', -0.5, 385.7, 573],
    ['R-600a', -11.8, 365.1, 551],
    ['R-717', -33.3, 1370, 603],
    ['R-1234yf', -29.5, 180.2, 1092],
    ['R-1234ze(E)', -19.0, 195.4, 1163],
    ['R-1270', -47.6, 439, null],
  ];
  it.each(printed)('%s', (name, celsius, heat, density) => {
    const one = refrigerant(name);
    expect(Math.abs(one.boiling!.bubble - 273.15 - celsius)).toBeLessThanOrEqual(0.2);
    if (heat !== null) expect(Math.abs(latentHeat(one, 101325)! / 1000 / heat - 1)).toBeLessThanOrEqual(0.015);
    if (density !== null) expect(Math.abs(liquidDensity(one, 298.15)! / density - 1)).toBeLessThanOrEqual(0.004);
  });

  it('have the viscosities of the reference tables', () => {
    // Saturated liquid and vapour at 25 degC, micropascal seconds: NIST Chemistry WebBook, from memory; within 6 %.
    for (const [name, liquid, vapour] of [
      ['R-134a', 195, 11.7],
      ['R-290', 97, 8.3],
      ['R-600a', 151, 7.5],
      ['R-32', 114, 12.8],
    ] as const) {
      expect(Math.abs((liquidViscosity(refrigerant(name), 298.15)! * 1e6) / liquid - 1), name).toBeLessThan(0.06);
      expect(Math.abs((vapourViscosity(refrigerant(name), 298.15)! * 1e6) / vapour - 1), name).toBeLessThan(0.08);
    }
  });
});

describe('glide, both ways', () => {
  // Psig bubble and dew at 40 degF: published charts agree with handbook 3.5 within 1 psi; degrees at 1 atm: ASHRAE Standard 34, from
  // memory (handbook 3.4), within the 1 K by which dew and bubble points of the standard and of the model differ together.
  it.each([
    ['R-407C', 80.2, 63.2, 7.1],
    ['R-448A', 89.3, 71.2, 6.1],
    ['R-449A', 87.9, 71.2, 6.1],
    ['R-454B', 113.2, 107.5, 0.9],
    ['R-454C', 81.4, 59.6, 8.2],
    ['R-404A', 86.9, 85.4, 0.8],
    ['R-410A', 118.8, 118.4, 0.1],
  ])('%s', (name, bubble, dew, kelvin) => {
    const one = refrigerant(name);
    const gauge = (pressure: number): number => (pressure - 101325) / psi;
    expect(Math.abs(gauge(bubblePressure(one, fahrenheit(40))!) - bubble)).toBeLessThan(1);
    expect(Math.abs(gauge(dewPressure(one, fahrenheit(40))!) - dew)).toBeLessThan(1);
    expect(Math.abs(glideAt(one, 101325)! - kelvin)).toBeLessThan(1);
    // The same lines read the other way: at the bubble pressure it begins to boil at 40 degF.
    expect(bubbleTemperature(one, bubble * psi + 101325)! * 1.8 - 459.67).toBeCloseTo(40, 0);
    expect(dewTemperature(one, dew * psi + 101325)! * 1.8 - 459.67).toBeCloseTo(40, 0);
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
