import { describe, expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

/**
 * A machine that kept its charge takes what came out of its opened section and what new line asks, by common practice; the
 * plate and the sheet say how much it takes in all (handbook 9.1).
 */
describe('what is weighed into a machine that kept its charge', () => {
  const found = (plan: string, ...swaps: readonly Swap[]): readonly string[] =>
    foundIn(`${plan}.jobplan`, swaps).map(({ name }) => name);
  const weighed = (mass: string): Swap => ['charge system with R-410A\n', `charge system with R-410A ${mass}\n`];

  it('is the allowance of the longer line', () => {
    expect(found('ductless-line-moved', weighed('4 oz'))).toEqual([]);
  });
  it.each(['2 lb 10 oz', '40 lb'])('is not %s on top of the charge that was pumped down', (mass) => {
    expect(found('ductless-line-moved', weighed(mass))).toEqual(['charge-does-not-fit']);
  });
  it('is not the whole charge after one branch was emptied', () => {
    expect(found('vrf-branch-leak', ['R-410A 2 lb 3 oz', 'R-410A 22 lb 3 oz'])).toEqual(['charge-does-not-fit']);
  });
  it('is not a slip of the unit either', () => {
    expect(found('vrf-branch-leak', ['R-410A 2 lb 3 oz', 'R-410A 23 kg'])).toEqual(['charge-does-not-fit']);
  });
  it('is no full charge on top of one that was never taken out', () => {
    expect(found('topped-up-nothing-opened', ['1 lb 12 oz', '7 lb 12 oz'])).toContain('charge-does-not-fit');
  });
});
