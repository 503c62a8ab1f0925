import { expect, it } from 'vitest';
import { foundIn } from './edited';

// A shell that bears the low side's pressure stands behind its shut valves while the high side is tested (handbook 7.1).
it('nitrogen of a test is not let through to what bears less', () => {
  const found = foundIn('rack-conversion.jobplan', [
    ['      release nitrogen outdoors\n      restore transducers, relief-valves\n', ''],
    [
      '      open sol-1, sol-2, sol-3 by magnet\n      evac-1',
      '      open sol-1, sol-2, sol-3 by magnet\n      release nitrogen outdoors\n      restore transducers, relief-valves\n      evac-1',
    ],
  ]);
  const [first] = found.filter(({ name }) => name === 'pressure-above-rating');
  expect(first?.message).toMatch(/let the nitrogen down first/);
  expect(first?.fixes).toHaveLength(1);
});
