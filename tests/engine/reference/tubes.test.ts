import { describe, expect, it } from 'vitest';
import { foot, inch, millimetre } from '../../../server/engine/reference/table-units';
import { allowableStress, copperDensity } from '../../../server/engine/reference/tube-stress';
import { nearestTube, tubeNamed, tubes } from '../../../server/engine/reference/tubes';
import acr from '../../../server/engine/reference/tubes-acr.json';

const fahrenheit = (degrees: number): number => (degrees + 459.67) / 1.8;

describe('tube sizes', () => {
  // Printed bore areas of ASTM B280 (handbook WE-11, source 2), in², to their last digit.
  it.each([
    ['3/8 in', 0.076, 3],
    ['1/2 in', 0.149, 3],
    ['5/8 in', 0.242, 3],
    ['7/8 in', 0.484, 3],
    ['1-1/8 in', 0.825, 3],
    ['1-3/8 in', 1.26, 2],
  ])('%s has a bore of %f in²', (size, area, digits) => {
    const bore = tubeNamed(size, 'ACR', 'annealed')!.bore / inch;
    expect(Number(((Math.PI / 4) * bore ** 2).toFixed(digits))).toBeCloseTo(area, digits);
  });

  it('reproduces every printed weight of ASTM B280-20 table 1 to its last digit', () => {
    const printed = acr.rows.filter((row) => row.printedWeight !== null);
    expect(printed).toHaveLength(10);
    for (const row of printed) {
      const tube = tubeNamed(`${row.size} in`, 'ACR', 'drawn')!;
      const perFoot = (Math.PI * (tube.outsideDiameter - tube.wall) * tube.wall * copperDensity * foot) / 0.45359237;
      const unit = row.printedWeight! < 1 ? 1e-3 : 1e-2;
      expect([row.size, Math.abs(perFoot - row.printedWeight!) <= 0.75 * unit]).toEqual([row.size, true]);
    }
  });

  it.each(['7/8 in', '7/8in', '7/8"', '7/8 inch', ' 7/8  in'])('reads %s', (size) => {
    expect(tubeNamed(size, 'ACR')?.name).toBe('7/8 in');
  });

  it('finds a tube by its outside diameter in metres, and by a compound size', () => {
    expect(tubeNamed(0.875 * inch, 'ACR')?.name).toBe('7/8 in');
    expect(tubeNamed('1 1/8 in', 'ACR')?.name).toBe('1-1/8 in');
    expect(tubeNamed(22 * millimetre, 'EN')).toMatchObject({ name: '22 mm', bore: expect.closeTo(0.02, 9) });
    expect(tubeNamed('7/8 in', 'EN')?.bore).toBeCloseTo(20.23e-3, 6); // EN 12735-1 inch series, handbook 1.2
  });

  it('knows no size that the standard has not', () => {
    expect(tubeNamed('9/16 in', 'ACR')).toBeUndefined();
    expect(tubeNamed('4-1/8 in', 'ACR', 'annealed')).toBeUndefined();
    expect(nearestTube(0.6 * inch, 'ACR').name).toBe('5/8 in');
  });

  it('leaves a bore in every tube', () => {
    for (const tube of tubes)
      expect([tube.name, tube.bore > 0 && tube.bore < tube.outsideDiameter]).toEqual([tube.name, true]);
  });
});

describe('stress of copper', () => {
  // Copper tube handbook table 3c, psi (handbook 1.3).
  it.each([
    ['annealed', 100, 6000],
    ['annealed', 150, 5100],
    ['annealed', 125, 5550],
    ['annealed', 400, 3000],
    ['drawn', 250, 10300],
    ['annealed', 0, 6000],
  ] as const)('%s at %d °F: %d psi', (temper, degrees, psi) => {
    expect(allowableStress(temper, fahrenheit(degrees))! / 6894.757).toBeCloseTo(psi, 1);
  });

  it('says nothing above 400 °F', () => {
    expect(allowableStress('annealed', fahrenheit(401))).toBeNull();
    expect(allowableStress('annealed', Number.NaN)).toBeNull();
  });
});
