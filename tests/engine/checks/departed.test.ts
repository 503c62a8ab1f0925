import { expect, it } from 'vitest';
import { textOf } from '../../../grammar/print';
import { foundIn } from './edited';

const last = '  replace label because "Club\'s own plate beside the unit" {';

/** Where a finding stands, and what its related places say, with one more departure in the job. */
function placed(departure: string, name: string): readonly (readonly string[])[] {
  return foundIn('burnout-by-standard.jobplan', [[last, `${departure}\n${last}`]])
    .filter((each) => each.name === name)
    .map(({ at, related }) => [textOf(at.item).trim(), ...related.map(({ message }) => message)]);
}

it('what a plan changes of its standard is told at the change', () => {
  const [at, first] = placed('  change test because "Quick" {\n    for 24 s\n  }', 'held-too-short')[0]!;
  expect(at).toMatch(/^change test/);
  expect(first).toBe('the line of the standard');
});

it('beside a finding at a line of the standard stand the steps that the plan leaves out', () => {
  const [at, ...related] = placed('  skip driers because "Rain"', 'joint-left-open')[0]!;
  expect(at).toMatch(/^follows/);
  expect(related).toContain('the plan leaves out this step of the standard');
});
