import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { Workspace } from '../../../server/engine/workspace';
import { rewrites } from './rewrites';

/** Sound plans say their job in one way of many: said otherwise, they must be left in peace as well. */
const folders = ['tests/fixtures/samples', 'tests/fixtures/good', 'examples'];
/** One plan in so many is tried with each rewrite, always the same ones; all of them take half a minute. */
const share = 5;

const plans = folders.flatMap((folder) => {
  const names = readdirSync(folder).filter((name) => name.endsWith('.jobplan'));
  const workspace = new Workspace();
  const texts = new Map(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
  for (const [name, text] of texts) workspace.setFile(name, text);
  return [...texts].map(([name, text]) => ({ name, text, workspace }));
});

test.each(Object.entries(rewrites))('%s: nothing is found', (_title, rewrite) => {
  const otherwise = plans.filter(({ text }) => rewrite(text) !== text);
  expect(otherwise.length).toBeGreaterThan(3);
  const found = otherwise
    .filter((_plan, at) => at % share === otherwise.length % share)
    .flatMap(({ name, text, workspace }) => {
      workspace.setFile(name, rewrite(text));
      const findings = workspace.snapshot().findings(name);
      workspace.setFile(name, text);
      return findings
        .filter((finding) => finding.severity !== 'information')
        .map((finding) => `${name}: ${finding.name}: ${finding.message}`);
    });
  expect(found).toEqual([]);
});
