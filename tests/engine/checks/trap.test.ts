import { expect, it } from 'vitest';
import { foundIn } from './edited';

// A trap keeps its solvent (handbook 5.2): drained, or purged for longer than the usual 30 to 90 s. The times are estimates.
const names = (plan: string, ...swaps: [string, string][]): readonly string[] =>
  foundIn(plan, swaps).map(({ name }) => name);
const freezer = 'freezer-new-condensing-unit.jobplan';
const drain: [string, string] = ['      drain suction-line at trap\n', ''];

it('much gas in a short time does not empty a trap', () => {
  expect(names(freezer, drain)).toEqual(['trap-not-drained']);
  expect(names(freezer, drain, ['      crimp liquid-line, suction-line at far end, leaving 1/8 in\n', ''])).toContain(
    'trap-not-drained',
  );
});

it('a purge of three minutes does', () => {
  expect(names(freezer, drain, ['at 100 psig for 120 s', 'at 100 psig for 180 s'])).toEqual([]);
});
