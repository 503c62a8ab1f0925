import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

/** What is said of the split plan when the crew leaves, or waits, before a step of it. */
function before(step: string, ...lines: readonly string[]): readonly string[] {
  const workspace = new Workspace();
  const visit = lines.at(-1) === 'visit';
  const put = `${lines.filter((line) => line !== 'visit').join('\n')}\n${visit ? 'visit "Second day" within 1 day {\n' : ''}`;
  const instead: (readonly [string, string])[] = [[step, `${put}${step}`]];
  if (visit) instead.push(['record quantities, readings', 'record quantities, readings\n}']);
  workspace.setFile('left.jobplan', exampleText({ base: 'split', instead }));
  return workspace
    .snapshot()
    .findings('left.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => finding.name);
}

it.each([
  ['a hold with the lines open while somebody looks at a cloth', before('place new', 'hold "Clean cloth" by lead')],
  ['a stand test over night', before('release nitrogen', 'visit')],
  ['a proven vacuum', before('check ignition-sources', 'visit')],
  ['a machine that runs', before('label system', 'visit')],
])('is silent: %s', (_, found) => {
  expect(found).toEqual([]);
});

it.each([
  ['lines open over night', before('crimp each kept', 'visit')],
  ['a vacuum that nobody proved', before('decay-test each', 'visit')],
])('finds %s', (_, found) => {
  expect(found).toEqual(['left-unattended']);
});
