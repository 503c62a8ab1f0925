import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { chapters } from '../../../server/command/docs/chapters';
import { checksReference } from '../../../server/command/docs/checks';
import { pages } from '../../../server/engine/checks/pages';

const read = (path: string): string => {
  const url = new URL(`../../../${path}`, import.meta.url);
  return existsSync(url) ? readFileSync(url, 'utf8') : '';
};

test('docs/checks.md is what the checks give: "npm run docs" writes it', () => {
  expect(read('docs/checks.md')).toBe(checksReference(chapters, read('docs/parts/checks-notes.md')));
});

test('every page stands in one chapter, and its name is a place to link to', () => {
  const named = chapters.flatMap((chapter) => chapter.pages.map((page) => page.name));
  expect([...named].sort()).toEqual(pages.map((page) => page.name).sort());
  const text = checksReference(chapters, '');
  for (const { name, meaning } of pages) {
    expect(text).toContain(`\n### ${name}\n`);
    expect(text).toContain(meaning);
  }
});
