import { describe, expect, it } from 'vitest';
import {
  air,
  bubblePressure,
  bubbleTemperature,
  contentOf,
  dewPressure,
  dewTemperature,
  glideAt,
  latentHeat,
  liquidDensity,
  liquidEnthalpy,
  liquidViscosity,
  nitrogen,
  outside,
  refrigerantNamed,
  refrigerantNames,
  superheatedVapour,
  trustIn,
  vapourDensity,
  vapourEnthalpy,
  vapourViscosity,
  waterBoilingTemperature,
  waterSaturationPressure,
} from '../../../server/engine/properties/index';

const all = refrigerantNames.map((name) => refrigerantNamed(name)!);
const never = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0, -1, 1e12];
const ofTemperature = {
  bubblePressure,
  dewPressure,
  liquidDensity,
  vapourDensity,
  liquidEnthalpy,
  vapourEnthalpy,
  liquidViscosity,
  vapourViscosity,
};
const ofPressure = { bubbleTemperature, dewTemperature, glideAt, latentHeat };

describe('outside a table there is no figure', () => {
  it.each(Object.entries(ofTemperature))('%s', (_, property) => {
    for (const refrigerant of all) {
      const [low, high] = refrigerant.temperatureRange;
      for (const temperature of [low - 0.01, high + 0.01, ...never])
        expect(property(refrigerant, temperature)).toBeNull();
      for (const temperature of [low, (low + high) / 2, high]) {
        expect(Number.isFinite(property(refrigerant, temperature)), refrigerant.name).toBe(true);
      }
    }
  });

  it.each(Object.entries(ofPressure))('%s', (_, property) => {
    for (const refrigerant of all) {
      const [low, high] = refrigerant.temperatureRange;
      const least = dewPressure(refrigerant, low)!;
      const most = bubblePressure(refrigerant, high)!;
      for (const pressure of [least * 0.999, most * 1.001, ...never]) {
        expect(property(refrigerant, pressure)).toBeNull();
      }
      const middle = dewPressure(refrigerant, (low + high) / 2)!;
      expect(Number.isFinite(property(refrigerant, middle)), refrigerant.name).toBe(true);
    }
  });

  it('superheated vapour', () => {
    for (const refrigerant of all) {
      const { dewTemperature: dews, superheat } = refrigerant.vapourRange;
      const dew = (dews[0] + dews[1]) / 2;
      const pressure = dewPressure(refrigerant, dew)!;
      expect(superheatedVapour(refrigerant, pressure, dew + superheat[1] + 0.01)).toBeNull();
      expect(superheatedVapour(refrigerant, pressure, dew - 0.01)).toBeNull();
      expect(superheatedVapour(refrigerant, dewPressure(refrigerant, dews[1] + 0.02)!, dews[1] + 5)).toBeNull();
      for (const wrong of never) {
        expect(superheatedVapour(refrigerant, wrong, dew)).toBeNull();
        expect(superheatedVapour(refrigerant, pressure, wrong)).toBeNull();
      }
      // Vapour at its dew point is the saturated vapour of the other table: 0.1 % between two fits of one library.
      const saturated = superheatedVapour(refrigerant, pressure, dew)!;
      expect(Math.abs(saturated.density / vapourDensity(refrigerant, dew)! - 1), refrigerant.name).toBeLessThan(1e-3);
      expect(saturated.viscosity).toBeCloseTo(vapourViscosity(refrigerant, dew)!, 10);
    }
  });

  it('gases', () => {
    for (const gas of [nitrogen, air]) {
      const [cold, hot] = gas.temperatureRange;
      const [thin, dense] = gas.pressureRange;
      for (const property of ['density', 'enthalpy', 'entropy', 'viscosity'] as const) {
        for (const temperature of [cold - 0.01, hot + 0.01, ...never])
          expect(gas[property](1e5, temperature)).toBeNull();
        for (const pressure of [thin - 1, dense + 1, ...never]) expect(gas[property](pressure, 300)).toBeNull();
        expect(Number.isFinite(gas[property](1e5, 300))).toBe(true);
      }
      for (const density of never) expect(gas.pressure(density, 300)).toBeNull();
      expect(gas.pressure(1, 500)).toBeNull();
      expect(contentOf(gas, 0.04, dense * 2, 300)).toBeNull();
    }
  });

  it('water', () => {
    for (const temperature of [233.14, 423.16, ...never]) expect(waterSaturationPressure(temperature)).toBeNull();
    for (const pressure of [12.8, 480000, ...never]) expect(waterBoilingTemperature(pressure)).toBeNull();
  });

  it('and the reason is said in words, with the range in both systems', () => {
    const refrigerant = refrigerantNamed('R-410A')!;
    expect(outside(refrigerant, 'temperature')).toContain('-94..151 degF (-70..66.2 degC)');
    expect(outside(refrigerant, 'bubble')).toMatch(/psia .*kPa absolute/);
    expect(outside(refrigerant, 'dew')).toContain('dew line');
    expect(outside(refrigerant, 'superheat')).toContain('0..144 Δ°F (0..80 Δ°C)');
  });
});

describe('on every saturation line', () => {
  it('pressure rises with temperature and leads back to it', () => {
    for (const refrigerant of all) {
      const [low, high] = refrigerant.temperatureRange;
      let before = 0;
      for (let step = 0; step <= 200; step++) {
        const temperature = low + ((high - low) * step) / 200;
        const bubble = bubblePressure(refrigerant, temperature)!;
        const dew = dewPressure(refrigerant, temperature)!;
        expect(bubble, refrigerant.name).toBeGreaterThan(before);
        expect(bubble, refrigerant.name).toBeGreaterThanOrEqual(dew * (1 - 1e-4));
        expect(Math.abs(bubbleTemperature(refrigerant, bubble)! - temperature)).toBeLessThan(1e-8);
        expect(Math.abs(dewTemperature(refrigerant, dew)! - temperature)).toBeLessThan(1e-8);
        before = bubble;
      }
    }
  });

  it('water boils where its pressure says', () => {
    for (let temperature = 233.15; temperature <= 423.15; temperature += 0.5) {
      expect(Math.abs(waterBoilingTemperature(waterSaturationPressure(temperature)!)! - temperature)).toBeLessThan(
        1e-6,
      );
    }
  });

  it('nitrogen has the pressure that its density makes', () => {
    for (const pressure of [2e3, 1e5, 1e6, 1.5e7, 3.4e7]) {
      expect(nitrogen.pressure(nitrogen.density(pressure, 294)!, 294)! / pressure).toBeCloseTo(1, 8);
    }
  });
});

describe('how far figures are trusted', () => {
  // Groups of the table in data/README.md.
  it.each([
    ['R-22', 0.002, 0.001],
    ['R-13', 0.01, 0.01],
    ['R-410A', 0.005, 0.002],
    ['R-454B', 0.01, 0.003],
    ['R-454C', 0.025, 0.003],
    ['R-422D', 0.05, 0.005],
    ['R-502', 0.04, 0.01],
    ['R-408A', 0.05, 0.01],
    ['R-402A', 0.05, 0.01],
    ['R-508B', 0.05, 0.01],
  ])('%s', (name, pressure, density) => {
    const trust = trustIn(refrigerantNamed(name)!);
    expect([trust.pressure, trust.density]).toEqual([pressure, density]);
  });

  it('says so where pairs are estimated or a viscosity is coarse', () => {
    for (const refrigerant of all) {
      const { note, pressure } = trustIn(refrigerant);
      expect(note.includes('Estimated'), refrigerant.name).toBe(refrigerant.estimatedPairs.length > 0);
      expect(note.includes('coarse'), refrigerant.name).toBe(refrigerant.viscosityTrust === 'coarse');
      if (refrigerant.estimatedPairs.length > 0) expect(pressure).toBeGreaterThanOrEqual(0.04);
    }
  });
});
