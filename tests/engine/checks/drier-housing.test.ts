import { expect, it } from 'vitest';
import { filesOf, workspaceOf } from '../../harness/plans';

const path = 'reach-in-burnout.jobplan';
const files = filesOf('tests/fixtures/good');

/** What is found above information when the visit that takes the suction cores out goes as told between recovery and valves. */
function found(...steps: readonly string[]): readonly string[] {
  const text = files[path]!.replace(
    /( {6}recover suction-drier[^\n]*\n)[\s\S]*?( {6}open valves of suction-drier\n)/,
    (_, before: string, after: string) => before + steps.map((step) => `      ${step}\n`).join('') + after,
  );
  expect(text).toContain(`${steps.at(-1)}\n      open valves of suction-drier`);
  const findings = workspaceOf({ ...files, [path]: text })
    .snapshot()
    .findings(path);
  return findings.filter(({ severity }) => severity !== 'information').map(({ name }) => name);
}

// Whatever was opened to the air is evacuated to the usual level before refrigerant comes to it (handbook 8.1, 13.1: any
// opening after the vacuum loses it); a drier's housing between its own valves is no other part.
it.each([
  ['in the usual order', ['remove-cores suction-drier', 'evacuate suction-drier to 500 micron'], []],
  ['without a pull', ['remove-cores suction-drier'], ['charge-into-gas']],
  [
    'with the cores taken out after the pull',
    ['evacuate suction-drier to 500 micron', 'remove-cores suction-drier'],
    ['charge-into-gas'],
  ],
  [
    'with nitrogen left in it',
    [
      'remove-cores suction-drier',
      'evacuate suction-drier to 500 micron',
      'break-vacuum suction-drier with nitrogen to 1 psig',
    ],
    ['charge-into-gas'],
  ],
  [
    'with a pull of 5,000 micron',
    ['remove-cores suction-drier', 'evacuate suction-drier to 5000 micron'],
    ['evacuation-not-deep'],
  ],
  [
    'with a decay test that lets it rise to 5,500 micron',
    [
      'remove-cores suction-drier',
      'evacuate suction-drier to 500 micron',
      'decay-test suction-drier for 15 min, rise at most 5000 micron',
    ],
    ['decay-limit-high'],
  ],
] as const)("a suction drier's housing %s", (_, steps, expected) => {
  expect(found(...steps)).toEqual(expected);
});
