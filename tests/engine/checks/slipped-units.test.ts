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
