import { expect, it } from 'vitest';
import { foundIn } from './edited';

// Wet cloth comes off when the joint is cold (common practice; handbook 11, braze).
it('a heat guard that is never taken off is told where it is put on', () => {
  const found = foundIn('water-source-coil.jobplan', [['    unwrap reversing-valve\n', '']]);
  expect(found.map(({ name }) => name)).toEqual(['heat-guard-missing']);
  expect(found[0]!.message).toMatch(/never taken off/);
});
