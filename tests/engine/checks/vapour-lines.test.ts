import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';
import { foundIn } from './edited';

/** What is found at the sizes of the split's lines, where the maker's table is cited for the velocity. */
function sizes(liquid: string, suction: string): readonly string[] {
  const workspace = new Workspace();
  const instead = [
    ['tube 7/8 in ACR', `tube ${suction} in ACR`],
    ['tube 3/8 in ACR', `tube ${liquid} in ACR`],
    ['capacity 36000 Btu/h', 'capacity 36000 Btu/h\n  velocity accepted per "unit maker\'s line table"'],
  ] as const;
  workspace.setFile('sizes.jobplan', exampleText({ base: 'split', instead }));
  return workspace
    .snapshot()
    .findings('sizes.jobplan')
    .filter((finding) => finding.severity !== 'information' && finding.name === 'vapour-line-too-small')
    .map(({ message }) => message);
}

// Common practice: in every table of line sizes the suction line is the thicker of the two (handbook 10.1).
it.each([
  ['3/8', '1/4', [/^suction-line \(1\/4 in ACR\) is thinner than the liquid line \(3\/8 in ACR\)/]],
  ['7/8', '3/8', [/^suction-line \(3\/8 in ACR\) is thinner/]],
  ['3/8', '7/8', []],
  ['3/8', '3/8', []],
] as const)('a liquid line of %s in and a suction line of %s in', (liquid, suction, expected) => {
  expect(sizes(liquid, suction)).toEqual(expected.map((each) => expect.stringMatching(each)));
});

// Vapour of the low side needs the wider pipe, whoever states a load (common practice, no source).
describe('a suction line thinner than what carries no more', () => {
  const exchanged = (plan: string, ...[one, other]: readonly [string, string]): readonly string[] =>
    foundIn(plan, [
      [one, '@'],
      [other, one],
      ['@', other],
    ]).map(({ name }) => name);

  it.each(['machine-given-up.jobplan', 'ice-machine-hot-gas-valve.jobplan'])('%s', (plan) => {
    const wide = plan.startsWith('ice') ? 'tube 5/8 in ACR' : 'tube 7/8 in ACR';
    expect(exchanged(plan, 'tube 3/8 in ACR', wide)).toEqual(['vapour-line-too-small']);
  });
});
