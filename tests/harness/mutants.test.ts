import { expect, test } from 'vitest';
import { rateOf } from './rate';

/** The three samples here; `npm run mutants` goes over every sound plan. */
const rate = rateOf(['tests/fixtures/samples']);

test('harmful edits of the samples are found', () => {
  expect(rate.harmful).toBeGreaterThan(50);
  expect(rate.survivors.map(({ plan, what }) => `${plan}: ${what}`)).toEqual([]);
});

test('harmless edits of the samples are left in peace', () => {
  expect(rate.harmless).toBeGreaterThan(15);
  expect(rate.alarms.map(({ mutant, names }) => `${mutant.plan}: ${mutant.what} -> ${names.join(', ')}`)).toEqual([]);
});
