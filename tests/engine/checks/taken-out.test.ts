import { expect, it } from 'vitest';
import { foundIn } from './edited';

// Recover, prove zero, then open: handbook 2.1 and 13.1. Seals and cores belong to no part of the circuit, and open it all the same.
it.each([
  [
    'access-core-renewed.jobplan',
    '    prove-zero system\n    renew cores\n',
    '    renew cores\n    prove-zero system\n',
  ],
  [
    'mineral-oil-stays.jobplan',
    '    prove-zero system\n    cut-out filter-drier, sight-glass\n    change txv\n    renew seals, cores\n',
    '    renew seals, cores\n    prove-zero system\n    cut-out filter-drier, sight-glass\n    change txv\n',
  ],
])('%s: seals and cores come out once zero is proved', (plan, from, by) => {
  const found = foundIn(plan, [[from, by]]);
  expect(found.map(({ name }) => name)).toEqual(['not-proved-zero']);
  expect(found[0]!.message).toMatch(/^Seals or cores come out here/);
});

it('cores come out once the charge is out, where it comes out anyway', () => {
  const [found, ...others] = foundIn('access-core-renewed.jobplan', [
    [
      '    recover system to 0 psig\n    weigh cylinder\n    prove-zero system\n    renew cores\n',
      '    renew cores\n    recover system to 0 psig\n    weigh cylinder\n    prove-zero system\n',
    ],
  ]);
  expect(others).toEqual([]);
  expect(found!.name).toBe('renewed-under-charge');
});
