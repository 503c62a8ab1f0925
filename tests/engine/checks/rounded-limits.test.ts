import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

const pull = 'evacuate each open part to 500 micron';
const watch = 'rise at most 300 micron';

/** What is found above information when the last pull of the split and the rise of its decay test are written otherwise. */
function found(level: string, rise: string, file?: string): readonly string[] {
  const workspace = new Workspace();
  const instead = [[pull, `evacuate each open part to ${level}`] as const, [watch, `rise at most ${rise}`] as const];
  workspace.setFile('a.jobplan', exampleText({ base: 'split', instead, ...(file && { file, plan: 'under shop' }) }));
  return workspace
    .snapshot()
    .findings('a.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map(({ name }) => name);
}

// By definition 1 micron is 101325 / 760,000 Pa: 500 micron are 66.66 Pa, 0.6666 mbar or 0.5 torr (NIST SP 811).
describe('the usual 500 micron, as it is written in another unit', () => {
  it.each([
    ['70 Pa absolute', '40 Pa', []],
    ['67 Pa', '67 Pa', []],
    ['70 Pa', '70 Pa', []],
    ['50 Pa', '40 Pa', []],
    ['0.5 mmHg', '300 micron', []],
    ['0.5 torr', '0.3 torr', []],
    ['0.5 mmHg absolute', '300 micron', []],
    ['0.67 mbar', '0.4 mbar', []],
    ['0.7 mbar', '0.4 mbar', []],
    ['0.7 mbar absolute', '0.4 mbar', []],
    ['0.07 kPa', '40 Pa', []],
    ['80 Pa', '40 Pa', ['evacuation-not-deep']],
    ['1 mbar', '40 Pa', ['evacuation-not-deep']],
    ['10 mbar absolute', '40 Pa', ['evacuation-not-deep']],
    ['525 micron', '300 micron', ['evacuation-not-deep']],
    ['60 Pa', '100 Pa', ['decay-limit-high']],
  ] as const)('%s, rise %s', (level, rise, expected) => {
    expect(found(level, rise)).toEqual(expected);
  });
});

it('a limit of the shop bears the same rounding, and none in its own unit', () => {
  const shop = 'house-rules shop {\n  revision 1\n\n  every decay-test at most 200 micron\n}';
  expect(found('500 micron', '27 Pa', shop)).toEqual([]);
  expect(found('500 micron', '29 Pa', shop)).toEqual(['house-rule-broken']);
  expect(found('500 micron', '205 micron', shop)).toEqual(['house-rule-broken']);
});

it('elsewhere a pressure says what it counts from, and what a pump cannot reach is no level', () => {
  expect(found('500 micron', '300 micron')).toEqual([]);
  expect(found('0.01 psi', '300 micron')).toEqual([]);
  const workspace = new Workspace();
  workspace.setFile(
    'a.jobplan',
    exampleText({ base: 'split', instead: [['recover system to 0 inHg', 'recover system to 50 kPa']] }),
  );
  expect(
    workspace
      .snapshot()
      .findings('a.jobplan')
      .map(({ name }) => name),
  ).toContain('ambiguous-reference');
});
