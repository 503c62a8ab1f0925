import { expect, it } from 'vitest';
import { foundIn, type Swap } from './edited';

// What is read after a time of running, or written down of the new charge, is of a machine that runs (handbook 9.2, 13.1).
it.each<[string, string, readonly Swap[]]>([
  [
    'pressures of hours of running, before the power is back',
    'ultra-low-cascade.jobplan',
    [
      ['    restore power\n    start system\n    read pressures after 4 h\n', '    read pressures after 4 h\n'],
      ['    leak-check low\n', '    restore power\n    start system\n    leak-check low\n'],
    ],
  ],
  [
    'a record of a charge that only ran before it came out',
    'dry-lines-heat-pump.jobplan',
    [['    start system in heating\n', '']],
  ],
])('%s', (_, plan, swaps) => {
  expect(foundIn(plan, swaps).map(({ name }) => name)).toEqual(['read-while-standing']);
});
