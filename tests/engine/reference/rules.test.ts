import { describe, expect, it } from 'vitest';
import { subcoolingVerdict, superheatVerdict, valveSuperheatPasses } from '../../../server/engine/reference/charging';
import { equivalentLength } from '../../../server/engine/reference/equivalent-lengths';
import { decayPasses, decayRules } from '../../../server/engine/reference/evacuation';
import { leakRule } from '../../../server/engine/reference/leak-triggers';
import { fillingDensity } from '../../../server/engine/reference/recovery-cylinders';
import { pressureClass, recoveryLevel } from '../../../server/engine/reference/recovery-levels';
import { suctionDrierDrop } from '../../../server/engine/reference/suction-drier-drop';
import { superheatByFormula, targetSuperheat } from '../../../server/engine/reference/superheat-targets';
import { fahrenheit, foot, inch, micron, pound, psi } from '../../../server/engine/reference/table-units';
import { usedOilVerdict } from '../../../server/engine/reference/used-oil';

const difference = (degrees: number): number => degrees / 1.8;

describe('recovery', () => {
  // 40 CFR 82.156 table 1, whole (handbook 2.1, source 9).
  it.each([
    ['very-high', 500, '2020', { vacuumInHg: 0 }],
    ['high', 150, '2020', { vacuumInHg: 0 }],
    ['high', 150, '1993-11-14', { vacuumInHg: 0 }],
    ['high', 200, '1993-11-14', { vacuumInHg: 4 }],
    ['high', 200, '1993-11-15', { vacuumInHg: 10 }],
    ['medium', 199, '1993-11-14', { vacuumInHg: 4 }],
    ['medium', 199, '2020', { vacuumInHg: 10 }],
    ['medium', 200, '1992', { vacuumInHg: 4 }],
    ['medium', 200, '2020', { vacuumInHg: 15 }],
    ['low', 900, '1990', { absoluteMmHg: 25 }],
    ['low', 900, '2020', { absoluteMmHg: 25 }],
  ] as const)('%s pressure, %d lb, machine of %s', (group, pounds, made, level) => {
    expect(recoveryLevel(group, pounds * pound, made)).toEqual(level);
  });

  // 40 CFR 82.152, low-, medium-, high- and very high-pressure appliance.
  it.each([
    [44, 'low'],
    [148, 'medium'],
    [222, 'high'],
    [352, 'high'],
    [360, 'very-high'],
    [null, 'very-high'],
  ] as const)('%s psia at 104 °F is %s pressure', (psia, group) => {
    expect(pressureClass(psia === null ? null : psia * psi)).toBe(group);
  });

  it('lists the filling density of R-22', () => {
    expect(fillingDensity('R-22')! * 1000).toBe(1050); // WE-03, 49 CFR 173.304a(a)(2)
    expect(fillingDensity('R-410A')).toBeUndefined();
  });
});

describe('charging', () => {
  const target = (outdoors: number, wetBulb: number): number | null => {
    const found = targetSuperheat(fahrenheit(outdoors), fahrenheit(wetBulb));
    return found === null ? null : found * 1.8;
  };

  // Trade table (handbook 9.2) and the formula of WE-32..34, common practice.
  it.each([
    [95, 67, 12, 13],
    [90, 66, 13, 14],
    [75, 63, 16.5, 17],
    [115, 76, 23, 16.5],
  ])('outdoors %d, wet bulb %d: table %f, formula %f', (outdoors, wetBulb, table, formula) => {
    expect(target(outdoors, wetBulb)).toBeCloseTo(table, 6);
    expect(superheatByFormula(fahrenheit(outdoors), fahrenheit(wetBulb)) * 1.8).toBeCloseTo(formula, 6);
  });

  it.each([
    [115, 60],
    [54, 60],
    [80, 49],
    [96, 63],
  ])('gives no target outdoors %d, wet bulb %d', (outdoors, wetBulb) => {
    expect(target(outdoors, wetBulb)).toBeNull();
  });

  // California Title 24 RA3.2 (WE-36).
  it.each([
    [13, 18, 'good'],
    [13, 19, 'add'],
    [13, 7, 'remove'],
    [4, 4, 'not-valid'],
  ] as const)('target superheat %d, read %d: %s', (wanted, read, verdict) => {
    expect(superheatVerdict(difference(wanted), difference(read))).toBe(verdict);
  });

  // California Title 24 RA3.2.
  it.each([
    [10, 13, 'good'],
    [10, 6, 'add'],
    [10, 14, 'remove'],
  ] as const)('target subcooling %d, read %d: %s', (wanted, read, verdict) => {
    expect(subcoolingVerdict(difference(wanted), difference(read))).toBe(verdict);
  });

  // WE-37: installer 4 to 25 °F, verifier 3 to 26 °F.
  it.each([
    [3, false, true],
    [4, true, true],
    [25, true, true],
    [26, false, true],
  ])('valve superheat of %d °F: installer %s, verifier %s', (superheat, installer, verifier) => {
    expect(valveSuperheatPasses(difference(superheat), 'installer')).toBe(installer);
    expect(valveSuperheatPasses(difference(superheat), 'verifier')).toBe(verifier);
  });
});

describe('evacuation', () => {
  // WE-44: federal guide specification 15182, 300 micron, at most 500 after one hour.
  it.each([
    [300, 480, 3600, true],
    [300, 520, 3600, false],
    [300, 480, 1800, false],
    [310, 480, 3600, false],
  ])('from %d to %d micron in %d s: %s', (start, end, seconds, passes) => {
    const rule = decayRules.find((one) => one.name === 'guide-specification')!;
    expect(decayPasses(rule, start * micron, end * micron, seconds)).toBe(passes);
  });
});

describe('waste', () => {
  // WE-46 and WE-47: 40 CFR 279.10(b)(1)(ii)(B), handbook source 56.
  it.each([
    [1200, true, false, 'exempt-from-presumption'],
    [1200, true, true, 'presumed-hazardous'],
    [1200, false, false, 'presumed-hazardous'],
    [900, false, false, 'used-oil'],
  ] as const)('%d ppm, reclaimed %s, mixed %s: %s', (halogens, refrigerantReclaimed, mixed, verdict) => {
    expect(usedOilVerdict({ halogens, refrigerantReclaimed, mixed })).toBe(verdict);
  });
});

describe('other limits', () => {
  // WE-16: 40 CFR 82.157(a) and (c)(2) for ozone-depleting gas, 60 lb.
  it.each([
    ['comfort-cooling', 0.1],
    ['commercial', 0.2],
    ['industrial', 0.3],
  ] as const)('%s leaks at most %f a year', (use, share) => {
    expect(
      leakRule(use, 60 * pound, { ozoneDepleting: true, warming: 1810, composition: null }, '2027-01-01'),
    ).toMatchObject({
      share,
      citation: '40 CFR 82.157(c)',
      confidence: 'published',
    });
  });

  it('covers HFC from 15 lb and from 2026, but not residential air conditioning', () => {
    // 40 CFR 84.106(a)(1) to (4) and (c)(2).
    const gas = { ozoneDepleting: false, warming: 1387, composition: [{ refrigerant: 'R-32' }] };
    expect(leakRule('commercial', 15 * pound, gas, '2025-12-31')).toBeUndefined();
    expect(leakRule('commercial', 15 * pound, gas, '2026-01-01')?.share).toBe(0.2);
    expect(leakRule('commercial', 14 * pound, gas, '2026-01-01')).toBeUndefined();
    expect(leakRule('residential-and-light-commercial', 30 * pound, gas, '2027-01-01')).toBeUndefined();
  });

  // 40 CFR 82.157(a) from 50 lb of a blend too; 84.106(a)(3)(i) leaves out only what is ozone-depleting and nothing else.
  it.each([
    ['R-22 and R-125', ['R-125', 'R-290', 'R-22'], 2788, 20, '40 CFR 84.106(c)'],
    ['R-22 and R-125', ['R-125', 'R-290', 'R-22'], 2788, 50, '40 CFR 82.157(c)'],
    ['HCFC alone', ['R-22', 'R-124', 'R-142b'], 1585, 20, undefined],
    ['HCFC alone', ['R-22', 'R-124', 'R-142b'], 1585, 50, '40 CFR 82.157(c)'],
  ] as const)('a blend of %s (%s, %d), %d lb: %s', (_what, parts, warming, pounds, citation) => {
    const blend = { ozoneDepleting: true, warming, composition: parts.map((refrigerant) => ({ refrigerant })) };
    expect(leakRule('commercial', pounds * pound, blend, '2027-01-01')?.citation).toBe(citation);
  });

  it('asks nothing of a substitute with a warming potential of 53 and less', () => {
    // 40 CFR 84.106(a)(2): above 53.
    const gas = { ozoneDepleting: false, composition: null };
    expect(leakRule('commercial', 30 * pound, { ...gas, warming: 53 }, '2027-01-01')).toBeUndefined();
    expect(leakRule('commercial', 30 * pound, { ...gas, warming: 54 }, '2027-01-01')?.share).toBe(0.2);
  });

  // Trade handbook table, from memory (handbook 4.5): the row next below holds between rows.
  it.each([
    ['R-22', 40, 'temporary', 8],
    ['R-134a', 20, 'permanent', 1.5],
    ['R-448A', 0, 'temporary', 4],
    ['R-404A', -50, 'temporary', 2],
  ] as const)('suction drier with %s at %d °F, %s: %f psi', (name, degrees, use, drop) => {
    expect(suctionDrierDrop(name, fahrenheit(degrees), use) / psi).toBeCloseTo(drop, 9);
  });

  // Handbook 10.2, in the form of the ASHRAE table, from memory.
  it.each([
    ['long-radius-elbow', 0.875, 1.4],
    ['elbow', 1.125, 2.6],
    ['globe-valve', 0.375, 17],
    ['elbow', 4.125, 10.3125],
  ] as const)('%s of %f in: %f ft', (fitting, size, feet) => {
    expect(equivalentLength(fitting, size * inch) / foot).toBeCloseTo(feet, 6);
  });
});
