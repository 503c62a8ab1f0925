import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { bringing } from '../../../server/engine/checks/example-stock';
import { Workspace } from '../../../server/engine/workspace';

const found = (line: string): readonly string[] => {
  const workspace = new Workspace();
  workspace.setFile('oil.jobplan', exampleText({ base: 'split', plan: bringing(line) }));
  return workspace
    .snapshot()
    .findings('oil.jobplan')
    .filter(({ name }) => name === 'unknown-name')
    .map(({ message }) => message);
};

// The families of the trade are known (handbook 4.1); a slip in one is told like that of any other name.
it.each([
  ['oil POE 80 fl-oz', []],
  ['oil mineral 1 qt', []],
  ['oil POEx 80 fl-oz', ['There is no oil "POEx"; the nearest is "POE".']],
] as const)('%s among what is brought', (line, expected) => {
  expect(found(line)).toEqual(expected);
});
