import { expect, test } from 'vitest';
import { measure } from './measure';

/** A fixed part of what `npm run mutants` goes over: one in sixty, always the same ones. */
const outcomes = measure(['tests/fixtures/samples', 'tests/fixtures/good', 'examples'], 60);
const harmful = outcomes.filter((each) => each.edit.ruling.verdict === 'harmful');
const harmless = outcomes.filter((each) => each.edit.ruling.verdict === 'harmless');

test('most harmful line edits have a finding at the right place', () => {
  expect(harmful.length).toBeGreaterThan(80);
  expect(harmful.filter((each) => each.rightPlace).length / harmful.length).toBeGreaterThan(0.88);
});

test('most harmless line edits are left in peace', () => {
  expect(harmless.length).toBeGreaterThan(15);
  expect(harmless.filter((each) => each.names.length === 0).length / harmless.length).toBeGreaterThan(0.88);
});
