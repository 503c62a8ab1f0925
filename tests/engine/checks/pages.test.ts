import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { locate } from '../../../grammar';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Example } from '../../../server/engine/checks/define';
import { faultPages, pageNamed, pages } from '../../../server/engine/checks/pages';
import { Workspace } from '../../../server/engine/workspace';

const sources = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory()
      ? sources(join(folder, entry.name))
      : entry.name.endsWith('.ts')
        ? [readFileSync(join(folder, entry.name), 'utf8')]
        : [],
  );

/** The names that code gives to findings, by the ways in which it does; a kebab-case name of two words or `impossible`. */
function namesInCode(): Set<string> {
  const name = "'((?:[a-z]+-)+[a-z]+|impossible)'";
  const found = new Set<string>();
  const collect = (texts: readonly string[], ...patterns: readonly RegExp[]): void => {
    for (const text of texts)
      for (const pattern of patterns) for (const match of text.matchAll(pattern)) found.add(match[1]!);
  };
  collect(
    [...sources('server/engine/plan'), readFileSync('server/engine/faults.ts', 'utf8')],
    new RegExp(`\\bname: ${name},?\\s*(?:severity|message)`, 'g'),
    new RegExp(`\\bname: [^,]*\\? ${name}`, 'g'),
    new RegExp(`\\.report\\(\\s*${name}`, 'g'),
    new RegExp(`\\bfault\\(\\s*${name}`, 'g'),
  );
  collect(
    [readFileSync('server/engine/snapshot.ts', 'utf8')],
    new RegExp(`\\bname: ${name}`, 'g'),
    new RegExp(`use, ${name}`, 'g'),
    new RegExp(`use,\\s*${name}`, 'g'),
  );
  collect([readFileSync('server/engine/checks/check.ts', 'utf8')], new RegExp(`\\bat\\(\\s*${name}`, 'g'));
  collect([readFileSync('server/engine/quantity/problem.ts', 'utf8')], new RegExp(`\\| ${name}`, 'g'));
  collect([readFileSync('grammar/faults.ts', 'utf8')], new RegExp(`^  ${name}: '`, 'gm'));
  return found;
}

it('every name that a finding can bear has a page', () => {
  const names = namesInCode();
  // If this falls, the patterns above no longer see how the code names its findings.
  expect(names.size).toBeGreaterThan(25);
  expect([...names].filter((name) => pageNamed(name) === undefined)).toEqual([]);
});

it('no name has two pages', () => {
  const names = pages.map((page) => page.name);
  expect(names.filter((name, k) => names.indexOf(name) !== k)).toEqual([]);
});

function findings(example: Example): { text: string; found: readonly (readonly [name: string, line: number])[] } {
  const text = exampleText(example);
  const workspace = new Workspace();
  workspace.setFile('example.jobplan', text);
  workspace.setFile('not-there.jobplan', null);
  const snapshot = workspace.snapshot();
  const { tree } = snapshot.file('example.jobplan')!;
  return {
    text,
    found: snapshot.findings('example.jobplan').map((finding) => {
      const start = locate(tree, new Set([finding.at.item])).get(finding.at.item) ?? 0;
      return [finding.name, text.slice(0, start + finding.at.from).split('\n').length] as const;
    }),
  };
}

/** Of these no example of a readable length can be made. */
const withoutExample = new Set(['too-large', 'too-deep']);

describe.each(faultPages.filter((page) => !withoutExample.has(page.name)).map((page) => [page.name, page] as const))(
  '%s',
  (name, page) => {
    it('is found in the wrong example at the marked line', () => {
      const { text, found } = findings(page.wrong);
      const marked = text.split('\n').findIndex((line) => line.includes('# <- here')) + 1;
      expect(marked).toBeGreaterThan(0);
      expect(found.filter(([each]) => each === name).map(([, line]) => line)).toContain(marked);
    });
    it('is not found in the right one', () => {
      expect(findings(page.right).found.filter(([each]) => each === name)).toEqual([]);
    });
  },
);
