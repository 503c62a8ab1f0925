import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

/** What is found above information when the split's suction line is drained at its trap after a step. */
function drainedAfter(step: string): readonly string[] {
  const workspace = new Workspace();
  const instead = [[`${step}\n`, `${step}\n  drain suction-line at trap\n`]] as const;
  workspace.setFile('drained.jobplan', exampleText({ base: 'split', instead }));
  return workspace
    .snapshot()
    .findings('drained.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map(({ name }) => name);
}

// Handbook 2.1: nothing is opened that holds refrigerant above the atmosphere, or gas under pressure; a drain plug is no other.
it.each([
  ['survey system', ['open-under-pressure']],
  ['disconnect each kept line at both ends', []],
  ['pressure-test each open part to 450 psig for 30 min', ['open-under-pressure']],
  ['release nitrogen outdoors', []],
  ['adjust charge after 15 min', ['open-under-pressure']],
] as const)('a line drained after "%s"', (step, expected) => {
  expect(drainedAfter(step)).toEqual(expected);
});
