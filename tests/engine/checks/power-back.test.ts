import { expect, it } from 'vitest';
import { allFoundIn, foundIn } from './edited';

// 12 h and more with the heater on before a start: common practice (handbook 13.1).
it.each([
  'freezer-regulator-renewed.jobplan',
  'rusted-receiver-renewed.jobplan',
  'freezer-new-condensing-unit.jobplan',
])('power that comes back twice in a row may leave the sump cold, and harms nothing else: %s', (plan) => {
  const hours = plan.includes('regulator') ? 24 : 12;
  const swaps = [[`energise controls for ${hours} h`, 'restore power']] as const;
  expect(foundIn(plan, swaps)).toEqual([]);
  const found = allFoundIn(plan, swaps).find(({ name }) => name === 'heater-too-short');
  expect(found!.message).toMatch(/^Power comes back here and once more at step \d+ \(restore power\)/);
  const [edit] = found!.fixes[0]!.edits;
  expect(edit!.text).toBe('energise controls for 24 h');
});

it('controls that stay alone with power to the end: the lock-out is shown beside', () => {
  const [found] = foundIn('makers-sheet-throughout.jobplan', [
    ['    restore power\n    start system in cooling\n    read temperature-split per zone\n', ''],
  ]);
  expect(found!.name).toBe('power-not-restored');
  expect(found!.related.map(({ message }) => message)).toContain('the power goes off here');
});
