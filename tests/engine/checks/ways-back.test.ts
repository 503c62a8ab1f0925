import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

/** Findings of the split plan's usual order with labels and ways back put in; the rules are those of the first time round. */
function findings(...instead: readonly (readonly [string, string])[]): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('back.jobplan', exampleText({ base: 'split', instead }));
  return workspace
    .snapshot()
    .findings('back.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => `${finding.name}: ${finding.message}`);
}

const closeUp = ['  connect each kept', '  close-up: connect each kept'] as const;
const flushes = ['  crimp each kept', '  clean: crimp each kept'] as const;
const evacuates = ['  evacuate each', '  evacuate: evacuate each'] as const;
const test = 'pressure-test each open part to 450 psig for 30 min';
const decay = 'decay-test each open part for 15 min, rise at most 300 micron';
const back = (step: string, label: string) =>
  [step, `${step} {\n    if-fails back to ${label}, at most 2 times\n  }`] as const;

describe('a way back that suits', () => {
  it.each([
    ['the joint is remade once the nitrogen is let down', [closeUp, back(test, 'close-up')]],
    ['the pump is put on again after the vacuum is broken', [evacuates, back(decay, 'evacuate')]],
    ['the vacuum is broken before a joint is remade', [closeUp, back(decay, 'close-up')]],
  ])('%s', (_, instead) => {
    expect(findings(...instead)).toEqual([]);
  });
});

describe('a way back that does not suit', () => {
  it.each([
    [
      'the lines are flushed with both ends made up',
      [flushes, back(test, 'clean')],
      /^way-back-unsafe: .*(crimp|flush)/,
    ],
    [
      'the pump is put on refrigerant that was let in',
      [
        evacuates,
        ['charge system\n', 'charge system\n  read pressure of system {\n    if-fails back to evacuate\n  }\n'],
      ],
      /^way-back-unsafe: .*evacuate each open part.* still hold/,
    ],
    [
      'a torch comes to refrigerant that was let in',
      [
        closeUp,
        ['charge system\n', 'charge system\n  read pressure of system {\n    if-fails back to close-up\n  }\n'],
      ],
      /^way-back-unsafe: .*torch/,
    ],
    [
      'a joint is brazed with the power back on',
      [closeUp, ['start system', 'read pressure of system {\n    if-fails back to close-up\n  }\n  start system']],
      /^way-back-unsafe: /,
    ],
  ] as const)('%s', (_, instead, expected) => {
    const found = findings(...instead);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(expected);
  });
});
