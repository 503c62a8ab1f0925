import { expect, test } from 'vitest';
import { measure } from './measure';
import { folders } from './plans';

/** A fixed part of what `npm run mutants` goes over, always the same one. */
const outcomes = [...measure(folders, 200)];
const harmful = outcomes.filter((each) => each.ruling.verdict === 'harmful');
const harmless = outcomes.filter((each) => each.ruling.verdict === 'harmless');

test('most harmful edits have a finding at the right place', () => {
  expect(harmful.length).toBeGreaterThan(80);
  expect(harmful.filter((each) => each.rightPlace).length / harmful.length).toBeGreaterThan(0.96);
});

test('most harmless edits are left in peace', () => {
  expect(harmless.length).toBeGreaterThan(15);
  expect(harmless.filter((each) => each.names.length === 0).length / harmless.length).toBeGreaterThan(0.95);
});

test('most edits are ruled', () => {
  expect((harmful.length + harmless.length) / outcomes.length).toBeGreaterThan(0.8);
});
