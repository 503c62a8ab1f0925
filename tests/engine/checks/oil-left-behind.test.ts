import { expect, it } from 'vitest';
import { foundIn } from './edited';

// A drain leaves 20 to 50 % of the oil behind (handbook 4.2).
it('a drain is not counted with leaving next to nothing', () => {
  const found = foundIn('rack-conversion.jobplan', [['leaving 30 %', 'leaving 3.0 %']]).map(({ name }) => name);
  expect(found).toContain('oil-amount-unlikely');
});
