import { describe, expect, it } from 'vitest';
import { isProblem, show } from '../../../server/engine/quantity';
import type { Figure } from '../../../server/engine/takeoff/figure';
import { relationNamed } from '../../../server/engine/takeoff/figures';
import { type Given, readGiven } from '../../../server/engine/takeoff/given';

/** A figure by its relation's name, with inputs as a person writes them, at a site's atmosphere (Pa). */
function figure(
  name: string,
  inputs: Readonly<Record<string, string | readonly string[]>>,
  atmosphere = 101325,
): Figure {
  const relation = relationNamed(name)!;
  const read = (key: string, text: string): Given => {
    const given = readGiven(relation.inputs[key]!.kind, text, atmosphere);
    if (isProblem(given)) throw new Error(given.message);
    return given;
  };
  const given = Object.fromEntries(
    Object.entries(inputs).map(([key, text]) => [
      key,
      typeof text === 'string' ? read(key, text) : text.map((one) => read(key, one)),
    ]),
  );
  return relation.figure('case', given, { atmosphere });
}

const psi = 6894.757;
const pound = 0.45359237;
/** Standard atmosphere at 7,000 ft: 11.34 psia (ICAO standard atmosphere, printed in every table of altitudes). */
const sevenThousandFeet = 11.34 * psi;

describe('at 7,000 ft a gauge counts from 11.34 psia', () => {
  const high = (name: string, inputs: Readonly<Record<string, string>>) => figure(name, inputs, sevenThousandFeet);

  it('a test at 450 psig rises by the gas law on 461.34 psia', () => {
    // Gas law by hand: (450 + 11.34) x (90 + 459.67) / (70 + 459.67) - 11.34 = 467.4 psig; at sea level 467.5.
    const found = high('corrected-test-reading', { pressure: '450 psig', start: '70 degF', end: '90 degF' });
    const gauge = (found.quantity!.low - sevenThousandFeet) / psi;
    expect(gauge).toBeCloseTo(((450 + 11.34) * 549.67) / 529.67 - 11.34, 1);
    expect(found.workings.join()).toContain('461.3 psia');
  });

  it('a relief stands over the test by the gauge, as at sea level', () => {
    // By hand: 450 + 5 and 0.96 x 500, both by gauge.
    const found = high('relief-setting', { test: '450 psig', weakest: '500 psig' });
    expect((found.quantity!.low - sevenThousandFeet) / psi).toBeCloseTo(455, 3);
    expect((found.quantity!.high - sevenThousandFeet) / psi).toBeCloseTo(480, 3);
  });

  it('a line is filled from 11.34 psia: 50 ft of 3/8 and 7/8 to 500 psig take 6.7 scf, counted from the site’s air', () => {
    // Handbook WE-42: 6.65 scf at sea level, where Z at 514.7 psia is 0.995. By hand at 11.34 psia: what is in at 511.34
    // psia less what was in, 0.194 x (35.2 x 511.34/514.7 - 11.34/14.696) = 6.63 scf.
    const found = high('fill-nitrogen', { volume: '0.194 ft3', pressure: '500 psig' });
    expect(found.quantity!.low / 0.3048 ** 3).toBeCloseTo(6.63, 1);
  });

  it('saturation is absolute: R-22 at 40 °F reads 3.36 psi more than at sea level', () => {
    // Handbook 3.5 and every chart: 68.6 psig at sea level, so 68.6 + 14.696 - 11.34 = 71.9 psig.
    const found = high('bubble-pressure', { refrigerant: 'R-22', temperature: '40 degF' });
    expect((found.quantity!.low - sevenThousandFeet) / psi).toBeCloseTo(71.96, 0);
  });
});

describe('one vacuum in four units gives one figure', () => {
  // Handbook 8.4: 1 torr = 1000 micron = 133.322 Pa = 1.33322 mbar; 29.92125 inHg is one atmosphere of 760 torr, less 0.03937 for one torr.
  const levels = ['29.88188 inHg', '1000 micron', '133.322 Pa absolute', '1.33322 mbar'];
  const relations = [
    ['water-boiling', {}, 2e-5],
    ['effective-pump-speed', { pump: '6 cfm', bore: '0.31 in', length: '5 ft' }, 2e-3],
    ['pump-down-time', { volume: '30 L', pump: '6 cfm', bore: '0.31 in', length: '5 ft', ultimate: '20 micron' }, 2e-3],
  ] as const;
  it.each(relations)('%s', (name, inputs, tolerance) => {
    const found = levels.map((level) => figure(name, { ...inputs, level }).quantity!.low);
    // 29.88188 inHg has seven digits and leaves 0.002 % of the atmosphere open, which is 0.05 % of 1000 micron.
    for (const each of found) expect(Math.abs(each / found[1]! - 1)).toBeLessThan(tolerance);
  });
});

describe('recovery cylinders', () => {
  it('refuses R-744, which is near its critical point of 87.8 °F in the sun', () => {
    const found = figure('safe-fill', { refrigerant: 'R-744', waterCapacity: '26.2 lb' });
    expect(found.quantity).toBeNull();
    expect(found.missing).toEqual([]);
    expect(found.notes.join()).toContain('R-744 is no liquid at 131 °F');
    expect(figure('cylinder-service-pressure', { refrigerant: 'R-744' }).notes.join()).toContain('critical point');
  });

  it.each([
    // Handbook 2.3, volume check at 130 °F: at 80 % by the guideline the liquid fills so much of the cylinder.
    ['R-410A', 97.3],
    ['R-404A', 96.6],
    ['R-125', 99.9],
  ])('%s is full of liquid before the fill rule says so', (refrigerant, share) => {
    // The guideline's fill would leave `share` percent at 130 °F; 95 % at 131 °F allows 95/share of it, a degree less.
    const fill = figure('safe-fill', { refrigerant, waterCapacity: '100 lb' });
    const guideline = Number(/= ([\d.]+) lb/.exec(fill.workings[0]!)![1]);
    const allowed = fill.quantity!.low / pound / guideline;
    expect(allowed).toBeLessThan(1);
    expect(allowed).toBeGreaterThan((95 / share) * 0.99);
    expect(allowed).toBeLessThan((95 / share) * 1.005);
  });

  it('R-134a and R-22 are held by the fill rule', () => {
    // Handbook 2.3, volume check: 89.3 and 89.9 % at 130 °F, under 95 %.
    for (const refrigerant of ['R-134a', 'R-22']) {
      const { workings, quantity } = figure('safe-fill', { refrigerant, waterCapacity: '100 lb' });
      expect(quantity!.low / pound).toBeCloseTo(Number(/= ([\d.]+) lb/.exec(workings[0]!)![1]), 1);
    }
  });
});

describe('evacuation', () => {
  it('has ice under the pump below 4,588 micron and none above', () => {
    // Handbook 8.3, IAPWS: water, ice and vapour stand together at 611.7 Pa = 4,588 micron.
    expect(figure('water-boiling', { level: '4500 micron' }).notes.join()).toContain('ice');
    expect(figure('water-boiling', { level: '4650 micron' }).notes.join()).not.toContain('ice');
    expect(show(figure('water-boiling', { level: '500 micron' }).quantity!)).toMatch(/^-1[123]/);
  });

  it('is held up by the hoses, not by the pump, through a quarter-inch hose with its core', () => {
    // Handbook 8.5: a 6-cfm pump behind 5 ft of 0.17 in gives 0.04 cfm at 500 micron. A pump of twice the size gains
    // next to nothing, a 3/4 hose gains a hundred times as much.
    const speed = (pump: string, bore: string, length = '5 ft') =>
      figure('effective-pump-speed', { pump, bore, length, level: '500 micron' });
    const cfm = 0.3048 ** 3 / 60;
    expect(speed('6 cfm', '0.17 in').quantity!.low / cfm).toBeCloseTo(0.04, 2);
    expect(speed('12 cfm', '0.17 in').quantity!.low / speed('6 cfm', '0.17 in').quantity!.low).toBeLessThan(1.01);
    expect(speed('6 cfm', '0.75 in', '3 ft').quantity!.low / cfm / 4.3).toBeCloseTo(1, 1);
    expect(speed('6 cfm', '0.17 in').notes.join()).toContain('hoses set');
    expect(speed('6 cfm', '0.75 in', '3 ft').notes.join()).not.toContain('hoses set');
  });

  it('a pull through the small hose takes many times the ideal time, and says why', () => {
    // Handbook 8.5: 30 L at 6 cfm to 500 micron take 78 s without hoses.
    const time = figure('pump-down-time', {
      volume: '30 L',
      pump: '6 cfm',
      bore: '0.17 in',
      length: '5 ft',
      level: '500 micron',
      ultimate: '0 micron',
    });
    expect(time.quantity!.low).toBeGreaterThan(10 * 78);
    expect(time.notes.join()).toContain('hoses set');
  });
});

describe('small rooms', () => {
  it('R-32 in 1,500 ft3: 7.2 lb are the most, so 6 lb pass and 8 lb do not', () => {
    // Handbook WE-38: 4.8 lb per thousand ft3 (mechanical code table 1103.1); 6 lb give 4.0, 8 lb give 5.3 lb/Mcf.
    const most = figure('room-charge-limit', { refrigerant: 'R-32', room: '1500 ft3' }).quantity!.low / pound;
    expect(most).toBeGreaterThan(6);
    expect(most).toBeLessThan(8);
    const at = (mass: string) =>
      figure('room-concentration', { charge: mass, room: '1500 ft3' }).quantity!.low / (pound / (1000 * 0.3048 ** 3));
    expect(at('6 lb')).toBeCloseTo(4.0, 1);
    expect(at('8 lb')).toBeCloseTo(5.3, 1);
  });

  it('R-32 in a bedroom of 300 ft3 may not exceed 1.44 lb, under the 1.84 kg that need no room', () => {
    // By hand: 0.3 x 4.8 lb; the cap m1 of the appliance standard is the published 1.84 kg (handbook section 11).
    expect(figure('room-charge-limit', { refrigerant: 'R-32', room: '300 ft3' }).quantity!.low / pound).toBeCloseTo(
      1.44,
      2,
    );
    expect(figure('flammable-charge-cap', { refrigerant: 'R-32', cap: 'm1' }).quantity!.low).toBeCloseTo(1.84, 2);
  });
});

describe('a double riser', () => {
  // Handbook 10.1: with R-22 at 40 °F, 7/8 carries oil from 430 to 450 fpm, 1-1/8 from about 510 fpm; 1.477 lb/ft3 and
  // 900 kg/m3 of oil. By area, 440 fpm x 0.484 in2 and 510 fpm x 0.825 in2 are 2.18 and 4.32 lb/min.
  const vapour = { density: '1.477 lb/ft3', oil: '900 kg/m3' };
  const bores = ['0.785 in', '1.025 in'];
  it('carries oil in both pipes at full load, not at least load, where the small one does alone', () => {
    const number = (flow: string, pipes: readonly string[]) =>
      figure('double-riser-number', { ...vapour, flow, bores: pipes }).quantity!.low;
    expect(number('8.32 lb/min', bores)).toBeGreaterThan(0.85);
    expect(number('3.1 lb/min', bores)).toBeLessThan(0.85);
    expect(number('3.1 lb/min', ['0.785 in'])).toBeGreaterThan(0.85);
    expect(number('1.8 lb/min', ['0.785 in'])).toBeLessThan(0.85);
  });
  it('the least flow of both is the sum of the least flows of each', () => {
    const least = (pipes: readonly string[]) =>
      figure('double-riser-least-flow', { ...vapour, bores: pipes }).quantity!.low / (pound / 60);
    expect(least(bores)).toBeCloseTo(least([bores[0]!]) + least([bores[1]!]), 9);
    expect(least(bores) / (2.18 + 4.32)).toBeCloseTo(1, 1);
  });
  it('one pipe has the number that a single riser has', () => {
    // Continuity by hand: 2.184 lb/min in 0.785 in at 1.477 lb/ft3 is 440 fpm.
    const single = figure('riser-flooding-number', { velocity: '440 ft/min', bore: '0.785 in', ...vapour });
    const double = figure('double-riser-number', { flow: '2.184 lb/min', bores: ['0.785 in'], ...vapour });
    expect(double.quantity!.low / single.quantity!.low).toBeCloseTo(1, 2);
  });
});

describe('dates and balances', () => {
  it('an overdue follow-up is below zero and says so', () => {
    // By the calendar: due on 11 February, looked at on 14 February.
    const found = figure('follow-up-days', { start: '2027-02-09', within: '2 days', today: '2027-02-14' });
    expect(found.quantity!.low).toBe(-3 * 86_400);
    expect(found.notes.join()).toContain('Overdue');
    expect(figure('follow-up-days', { start: '2027-02-30', within: '2 days', today: '2027-03-01' }).notes).toEqual([
      '2027-02-30 is no day of the calendar.',
    ]);
  });
  it('more recovered than stated is no negative loss', () => {
    // Conservation of mass: nothing is missing, the charge before was larger.
    const found = figure('carbon-balance', { refrigerant: 'R-22', held: '7 lb', recovered: '8 lb' });
    expect(found.quantity!.low).toBe(0);
    expect(found.notes.join()).toContain('larger');
  });
});
