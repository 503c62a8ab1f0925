import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

function found(text: string): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('let-off.jobplan', text);
  for (const path of workspace.wanted()) workspace.setFile(path, readFileSync(`tests/fixtures/good/${path}`, 'utf8'));
  return workspace
    .snapshot()
    .findings('let-off.jobplan')
    .filter(({ severity }) => severity !== 'information')
    .map(({ name }) => name);
}

const carbonDioxide = readFileSync('tests/fixtures/good/carbon-dioxide-case.jobplan', 'utf8');
const letOff = (step: string): string => carbonDioxide.replace(/^( *)recover case-piping.*$/m, `$1${step}`);

// 40 CFR 82.154(a)(1): carbon dioxide is exempt from the ban on venting in any use, R-22 in none (handbook 2.2).
it.each([
  ['carbon dioxide led outdoors', letOff('release case-piping to 0 psig outdoors'), []],
  ['carbon dioxide let off where people are', letOff('release case-piping to 0 psig'), ['refrigerant-vented']],
  [
    'R-22 let off',
    exampleText({ base: 'split', instead: [['recover system to 0 inHg', 'release system outdoors']] }),
    ['refrigerant-vented'],
  ],
])('%s', (_, text, expected) => {
  expect(text).toContain('release ');
  expect(found(text).filter((name) => name === 'refrigerant-vented' || name === 'open-under-pressure')).toEqual(
    expected,
  );
});

// A shut motor valve leaves the coil without a port under 300 psig and more (handbook 2.1, 13.5, 13.6).
it('carbon dioxide behind a shut valve is not let off with the rest', () => {
  const shut = letOff('release case-piping to 0 psig outdoors').replace('    open eev-6 by service-tool\n', '');
  expect(found(shut)).toContain('section-not-recovered');
});
