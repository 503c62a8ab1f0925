import { describe, expect, test } from 'vitest';
import type { PropertiesReport } from '../../server/command/shapes/properties';
import { json, Shop } from './shop';

const shop = new Shop();
const points = async (...words: readonly string[]): Promise<PropertiesReport['points']> =>
  (json(await shop.type('properties', ...words, '--format', 'json')) as PropertiesReport).points;

const psi = 6894.757;
const atmosphere = 101325;

describe('as JSON', () => {
  test('at a temperature: pressures, densities, heats', async () => {
    const [point] = await points('R-410A', '--at', '40 degF');
    expect(point!.at).toEqual({ temperature: expect.closeTo(277.594, 3) });
    // 118.1 to 118.9 psig at 40 degF. Source: pressure-temperature charts as printed on service gauges, from memory.
    expect((point!.bubblePressure! - atmosphere) / psi).toBeCloseTo(118.5, 0);
    expect(point!.dewPressure!).toBeLessThan(point!.bubblePressure!);
    expect(Object.keys(point!)).toEqual([
      'at',
      'bubblePressure',
      'dewPressure',
      'liquidDensity',
      'vapourDensity',
      'liquidEnthalpy',
      'vapourEnthalpy',
    ]);
  });
  test('at a pressure: both temperatures; several points in the order asked', async () => {
    const [first, second] = await points('R-454B', '--at', '118 psig', '5 degC');
    expect(Object.keys(first!)).toEqual(['at', 'bubbleTemperature', 'dewTemperature']);
    // Glide of about 1 K. Source: ASHRAE 34 designation of the blend, from memory.
    expect(first!.dewTemperature! - first!.bubbleTemperature!).toBeGreaterThan(0.5);
    expect(second!.at).toEqual({ temperature: 278.15 });
  });
  test('a vacuum counts down from the air of the site', async () => {
    const [point] = await points('R-22', '--at', '10 inHg', '--altitude', '5000 ft');
    // 24.90 inHg of air at 5,000 ft. Source: US Standard Atmosphere 1976.
    expect((point!.at as { pressure: number }).pressure / 3386.389).toBeCloseTo(14.9, 1);
  });
  test('says how far the model is trusted: estimated pairs and what stands further off than its group', async () => {
    // Shares of the groups in server/engine/properties/data/README.md.
    const trust = async (name: string) =>
      (json(await shop.type('properties', name, '--at', '40 degF', '--format', 'json')) as PropertiesReport).trust;
    expect(await trust('R-22')).toMatchObject({ pressure: 0.002, density: 0.001 });
    expect(await trust('R-454C')).toMatchObject({ pressure: 0.025 });
    expect((await trust('R-402A')).note).toContain('Estimated: the pairs R-125/R-22');
    expect((await shop.type('properties', 'R-402A', '--at', '40 degF')).out).toContain('Pressures within about 5 %');
  });
  test('outside the tables it says why, and nothing is guessed', async () => {
    const [point] = await points('R-410A', '--at', '400 degF');
    expect(Object.keys(point!)).toEqual(['at', 'outside']);
  });
});

test('the text is a table in the units asked', async () => {
  const { out, status } = await shop.type('properties', 'R-410A', '--at', '40 degF', '118 psig');
  expect(out).toMatch(/^ {2}40 degF +118\.8 psig +118\.4 psig/m);
  expect(out).toMatch(/^ {2}118 psig +39\.\d+ degF/m);
  expect(status).toBe(0);
  expect((await shop.type('properties', 'R-410A', '--at', '40 degF', '--units', 'si')).out).toContain('kPa gauge');
});

test.each([
  [['R-411', '--at', '40 degF'], 'There is no refrigerant "R-411" in the tables; perhaps'],
  [['R-410A'], "required option '--at <value...>' not specified"],
  [['R-410A', '--at', '40'], '`40` has no unit'],
  [['R-410A', '--at', '118 psi'], 'Perhaps "118 psig" or "118 psia" is meant.'],
  [['R-410A', '--at', '40..50 degF'], 'is a range; write its two ends'],
  [['R-410A', '--at', '3 ft'], 'neither a temperature nor a pressure'],
  [['R-410A', '--at', '-500 degF'], 'below absolute zero'],
])('wrong usage: %j', async (words, message) => {
  const ended = await shop.type('properties', ...words);
  expect(ended).toMatchObject({ status: 2, out: '' });
  expect(ended.said).toContain(message);
});
