import { expect, test } from 'vitest';
import { workspaceOf } from './shop';

const foundIn = (texts: Record<string, string>, path: string): string[] =>
  workspaceOf(texts)
    .snapshot()
    .findings(path)
    .map(({ name, message }) => `${name}: ${message}`);

test.each([
  ['', /unusable-path: The path is empty/],
  [' ', /unusable-path: The path is empty/],
  ['../../secret.jobplan', /unusable-path: The path leaves the workspace folder/],
  ['a/../../../secret.jobplan', /unusable-path: The path leaves the workspace folder/],
  ['/etc/passwd', /unusable-path: The path must be relative/],
  ['C:/plans/x.jobplan', /unusable-path: The path must be relative/],
  ['file:///x.jobplan', /unusable-path: The path must be relative/],
  ['https://example.org/x.jobplan', /unusable-path: The path must be relative/],
  ['shared\\x.jobplan', /unusable-path: Write the path with "\/"/],
  ['shared', /unusable-path: The path must name a .jobplan file/],
  ['shared/', /unusable-path: The path must name a .jobplan file/],
  ['.', /unusable-path: The path must name a .jobplan file/],
  ['secret.txt', /unusable-path: The path must name a .jobplan file/],
  ['missing.jobplan', /missing-file: There is no file "jobs\/missing.jobplan"/],
  ['self.jobplan', /circular-use: This file uses itself/],
  ['./../jobs/self.jobplan', /circular-use: This file uses itself/],
])('use %j: a clear finding, and nothing else is asked for', (written, finding) => {
  const workspace = workspaceOf({});
  workspace.setFile('jobs/self.jobplan', `use "${written}"\n`);
  // Only a path inside the folder is ever asked for.
  expect(workspace.wanted()).toEqual(written === 'missing.jobplan' ? ['jobs/missing.jobplan'] : []);
  for (const path of workspace.wanted()) workspace.setFile(path, null);
  const found = workspace.snapshot().findings('jobs/self.jobplan');
  expect(found.map(({ name, message }) => `${name}: ${message}`).join('\n')).toMatch(finding);
  expect(found).toHaveLength(1);
});

test('files that use each other, two or three of them, are told in each', () => {
  const two = { 'a.jobplan': 'use "b.jobplan"\n', 'b.jobplan': 'use "a.jobplan"\n' };
  for (const path of Object.keys(two))
    expect(foundIn(two, path).join()).toMatch(/circular-use: .* uses this file in turn/);
  const three = {
    'a.jobplan': 'use "b.jobplan"\n',
    'b.jobplan': 'use "c.jobplan"\n',
    'c.jobplan': 'use "a.jobplan"\n',
  };
  for (const path of Object.keys(three)) expect(foundIn(three, path).join()).toMatch(/circular-use: /);
  expect(foundIn({ ...three, 'd.jobplan': 'use "a.jobplan"\n' }, 'd.jobplan')).toEqual([]);
});

test('a file that comes, changes and goes under those that use it', () => {
  const workspace = workspaceOf({ 'job.jobplan': 'use "stock.jobplan"\nplan p "P" {\n  solvent clear\n}\n' });
  const told = () =>
    workspace
      .snapshot()
      .findings('job.jobplan')
      .map(({ name }) => name)
      .filter((name) => name !== 'no-steps');
  expect(told()).toEqual(expect.arrayContaining(['missing-file', 'unknown-name']));
  workspace.setFile('stock.jobplan', 'solvent clear {\n}\n');
  expect(told()).not.toContain('missing-file');
  expect(told()).not.toContain('unknown-name');
  workspace.edit('stock.jobplan', [{ from: 8, to: 13, text: 'other' }]);
  expect(told()).toContain('unknown-name');
  workspace.edit('stock.jobplan', [{ from: 8, to: 13, text: 'clear' }]);
  expect(told()).not.toContain('unknown-name');
  workspace.removeFile('stock.jobplan');
  expect(told()).toEqual(expect.arrayContaining(['missing-file', 'unknown-name']));
});
