import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Example } from '../../../server/engine/checks/define';
import { Workspace } from '../../../server/engine/workspace';

/** What is found above information when the charge is pumped down before the power is locked out. */
function found(base: Example['base'], ...lines: readonly string[]): readonly string[] {
  const workspace = new Workspace();
  const text = exampleText({ base, instead: [['lock-out power\n', `${lines.join('\n    ')}\n    lock-out power\n`]] });
  workspace.setFile('plan.jobplan', text);
  return workspace
    .snapshot()
    .findings('plan.jobplan')
    .filter(({ severity }) => severity !== 'information')
    .map(({ name, severity }) => `${severity} ${name}`);
}

// The charge is gathered where heat is given off in cooling, behind the shut liquid side (handbook 13.5).
describe('a pump-down', () => {
  it.each([
    ['receiver', []],
    ['condenser', []],
    ['evap-1', ['warning pump-down-in-vain']],
    ['suction-main', ['warning pump-down-in-vain']],
    ['liquid-main', ['warning pump-down-in-vain']],
  ] as const)('into %s', (into, told) => {
    expect(found('rack', 'close sol-1, sol-2', `pump-down system into ${into} to 0 psig`)).toEqual(told);
  });

  it.each([
    [[], []],
    [['start system in cooling'], []],
    [['start system in heating'], ['error pump-down-in-vain']],
    [['start system in defrost'], ['error pump-down-in-vain']],
    [['start system in heating', 'start system in cooling'], []],
  ] as const)('of a heat pump after %j', (starts, told) => {
    expect(found('heat-pump', ...starts, 'close service-valves', 'pump-down system to 0 psig')).toEqual(told);
  });
});
