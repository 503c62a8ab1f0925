import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

/** What is found above information in one section of the rack, worked on while the rest keeps its charge. */
function found(lockOut: string): readonly string[] {
  const workspace = new Workspace();
  const steps = [
    'close sol-1, sol-2, valve-s',
    lockOut,
    'recover txv-1, evap-1 to 0 inHg',
    'prove-zero evap-1',
    'remove txv-1',
  ];
  workspace.setFile('section.jobplan', exampleText({ base: 'rack', steps: steps.filter(Boolean).join('\n') }));
  return workspace
    .snapshot()
    .findings('section.jobplan')
    .map(({ name }) => name);
}

// Handbook 11 and 13.5: what could start in the section is locked out; the rest of the rack may run.
it.each([
  ['the fans of the case', 'lock-out evap-1', false],
  ['the valve itself', 'lock-out txv-1', false],
  ['the mains', 'lock-out power', false],
  ['nothing', '', true],
  ['what hangs behind a shut valve', 'lock-out liquid-drier', true],
] as const)('%s locked out', (_, lockOut, told) => {
  expect(found(lockOut).includes('work-without-lock-out')).toBe(told);
});
