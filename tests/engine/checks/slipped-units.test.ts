import { describe, expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

// Figures and units that cannot be right. The limits are common practice, no source, and lie far outside what machines have.
const told = (plan: string, ...swaps: Swap[]): readonly string[] =>
  foundIn(plan, swaps).map(({ name, message }) => `${name}: ${message}`);

describe('charge and capacity of a machine that is no comfort cooling', () => {
  it.each([
    ['freezer-new-condensing-unit.jobplan', 'capacity 9000 Btu/h', 'capacity 9000 kW'],
    ['freezer-new-condensing-unit.jobplan', 'capacity 9000 Btu/h', 'capacity 9 Btu/h'],
    ['one-case-rack-runs-on.jobplan', 'capacity 240000 Btu/h', 'capacity 240000 kW'],
  ])('%s: %s => %s', (plan, from, to) => {
    expect(told(plan, [from, to])).toEqual([expect.stringMatching(/^charge-does-not-fit: .* out of all proportion/)]);
  });

  it('a least load above the full one, or next to nothing of it', () => {
    const plan = 'double-riser-flushed.jobplan';
    for (const least of ['least 200000 Btu/h', 'least 20 Btu/h'])
      expect(told(plan, ['least 20000 Btu/h', least])).toContainEqual(
        expect.stringMatching(/^charge-does-not-fit: Its least load/),
      );
  });
});

describe('one amount in pounds and the other in kilograms', () => {
  it.each([
    ['walk-in-expansion-valve.jobplan', 'charge 12 lb\n    capacity', 'charge 12 kg\n    capacity'],
    ['parallel-evaporators.jobplan', 'charge 17 lb', 'charge 17 kg'],
    ['hot-gas-case.jobplan', '    charge 30 lb', '    charge 30 kg'],
  ])('%s: %s => %s', (plan, from, to) => {
    expect(told(plan, [from, to])).toEqual([
      expect.stringMatching(/^charge-does-not-fit: .* one of the two is a slip/),
    ]);
  });

  it('what a changeout weighs into a new machine', () => {
    expect(told('chill-room-condensing-unit.jobplan', ['with R-455A 1.6 kg', 'with R-455A 1.6 lb'])).toEqual([
      expect.stringMatching(/^charge-does-not-fit: .* weighed in here/),
    ]);
  });
});

describe('pressures in a greater unit', () => {
  it.each([
    [
      'three-days-under-nitrogen.jobplan',
      'at least 4 psig',
      'at least 4 MPa gauge',
      /^impossible-level: The gauge is to read/,
    ],
    [
      'condenser-plugged-overnight.jobplan',
      'release nitrogen to 5 psig',
      'release nitrogen to 5 MPa gauge',
      /^no-effect: /,
    ],
    [
      'one-indoor-unit-renewed.jobplan',
      'condenser to 2 psig',
      'condenser to 2 MPa gauge',
      /^pump-down-in-vain: .* is to end at/,
    ],
    [
      'carbon-dioxide-case.jobplan',
      'low 650 psig',
      'low 650 kPa gauge',
      /^design-pressure-unlikely: .* while it evaporates/,
    ],
    [
      'topped-up-nothing-opened.jobplan',
      'condensing 95 degF',
      'condensing 95 degC',
      /^working-temperatures-unlikely: /,
    ],
  ])('%s: %s => %s', (plan, from, to, what) => {
    expect(told(plan, [from, to])).toEqual([expect.stringMatching(what)]);
  });
});

describe('what does not go with what else the plan says', () => {
  it.each([
    [
      'old-plate-drop-in.jobplan',
      '60 fl-oz POE',
      '60 fl-oz alkylbenzene',
      /^oil-does-not-suit: compressor is stated with/,
    ],
    [
      'trailer-unit-converted.jobplan',
      '135 fl-oz POE',
      '135 fl-oz alkylbenzene',
      /^oil-does-not-suit: compressor is stated/,
    ],
    [
      'burnout-cores-three-visits.jobplan',
      'recovery 2 x r30',
      'recovery 1 x r30',
      /^recovery-cylinder-overfilled: 38 lb/,
    ],
    [
      'rack-conversion.jobplan',
      'reset low-pressure-switch, head-pressure-control, epr-3 for',
      'reset low-pressure-switch for',
      /^conversion-not-carried-through: epr-3 still stands/,
    ],
  ])('%s: %s => %s', (plan, from, to, what) => {
    expect(told(plan, [from, to])).toEqual([expect.stringMatching(what)]);
  });
});

describe('purges and tests whose figures slipped', () => {
  it('a last purge that blows less than those of the rounds', () => {
    const found = told(
      'ductless-no-ports.jobplan',
      ['purge each kept line at 50 psig for 15 s', 'purge each kept line at 100 psig for 15 s'],
      ['purge each kept line at 100 psig for 45 s', 'purge each kept line at 50 psig for 45 s'],
    );
    expect(found).toEqual([expect.stringMatching(/^final-purge-weak: .* the two look exchanged/)]);
  });

  it.each([
    ['burnout-cores-three-visits.jobplan', 'suction-drier to 150 psig', 'suction-drier to 150 kPa gauge'],
    ['compressor-between-valves.jobplan', 'compressor to 250 psig', 'compressor to 250 kPa gauge'],
  ])('%s: %s => %s', (plan, from, to) => {
    expect(told(plan, [from, to])).toEqual([expect.stringMatching(/^test-below-design: What was closed on gaskets/)]);
  });
});

describe('a charge that is trimmed out of next to nothing', () => {
  it.each([
    ['rubbed-liquid-line-pumped-down.jobplan', 'refrigerant R-404A 5 lb', 'refrigerant R-404A 5 oz'],
    ['walk-in-expansion-valve.jobplan', 'refrigerant R-449A 4 lb', 'refrigerant R-449A 4 oz'],
    ['walk-in-expansion-valve.jobplan', 'refrigerant R-449A 4 lb', 'refrigerant R-449A 1.333 lb'],
  ])('%s: %s => %s', (plan, from, to) => {
    expect(told(plan, [from, to])).toEqual([expect.stringMatching(/^stock-falls-short: .* is trimmed here/)]);
  });
});
