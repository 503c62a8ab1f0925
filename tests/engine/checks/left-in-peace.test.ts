import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { Workspace } from '../../../server/engine/workspace';

/** What is left in peace in a sound plan is still found where one line of that plan makes it a mistake. */
const folder = new URL('../../fixtures/good/', import.meta.url);
const texts = new Map(
  readdirSync(folder)
    .filter((name) => name.endsWith('.jobplan'))
    .map((name) => [name, readFileSync(new URL(name, folder), 'utf8')] as const),
);

function found(plan: string, from: string, by: string): readonly string[] {
  const workspace = new Workspace();
  for (const [name, text] of texts) workspace.setFile(name, text);
  const name = `${plan}.jobplan`;
  const text = texts.get(name)!;
  expect(text, `${plan} says "${from}"`).toContain(from);
  workspace.setFile(name, text.replaceAll(from, by));
  return workspace
    .snapshot()
    .findings(name)
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => finding.name);
}

describe('the twin of what is sound', () => {
  test.each<[what: string, plan: string, from: string, by: string, name: string]>([
    [
      'a sweep before opening is no evacuation without test; the last one is',
      'propane-display-compressor',
      '    pressure-test system to 10 psig for 10 min, bubbles on every joint\n    pressure-test system to 200 psig for 30 min\n    release nitrogen outdoors\n',
      '',
      'not-pressure-tested',
    ],
    [
      'a sweep may be shallow; the last evacuation may not',
      'propane-display-compressor',
      'evacuate system to 400 micron',
      'evacuate system to 1000 micron',
      'evacuation-not-deep',
    ],
    ['water that is shut off', 'ice-machine-hot-gas-valve', '    open water-valve\n', '', 'not-put-back'],
    [
      'a charge below the atmosphere is a charge; none is none',
      'low-pressure-chiller',
      '    charge system with R-123 700 lb\n',
      '',
      'compressor-without-refrigerant',
    ],
    [
      'behind a flash tank a line bears the pressure of the tank, and no less',
      'carbon-dioxide-case',
      'length 120 ft\n      wall 0.065 in\n      rated 870 psig',
      'length 120 ft\n      wall 0.065 in\n      rated 500 psig',
      'tube-not-rated',
    ],
    [
      'a visit of the next season has its own weather; one of this week has not',
      'dry-lines-heat-pump',
      'within 30 weeks',
      'within 2 days',
      'adjusted-in-cold',
    ],
    [
      'two certificates count, if one of them covers',
      'roof-unit-circuit-two',
      'lead certified type-II',
      'lead certified type-III, flammable',
      'certificate-does-not-cover',
    ],
    ['a case locked out on its own', 'carbon-dioxide-case', '    lock-out case-6\n', '', 'work-without-lock-out'],
    ['a slip in a name', 'water-heater-compressor', 'wrap expansion-valve', 'wrap expansoin-valve', 'unknown-name'],
    ['a slip in a kind', 'walk-in-new-lines', 'into receiver', 'into reciever', 'unknown-name'],
  ])('%s', (_what, plan, from, by, name) => {
    expect(found(plan, from, by)).toContain(name);
  });
});

test('a thing that only looks like a part is no slip', () => {
  expect(found('water-heater-compressor', 'check tank-full', 'check tank-fill')).toEqual([]);
});
