import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { languageReference } from '../../../server/command/docs/language';
import { vocabulary } from '../../../server/engine/vocabulary';

const read = (path: string): string => {
  const url = new URL(`../../../${path}`, import.meta.url);
  return existsSync(url) ? readFileSync(url, 'utf8') : '';
};

test('docs/language.md is what the vocabulary gives: "npm run docs" writes it', () => {
  expect(read('docs/language.md')).toBe(languageReference(vocabulary, read('docs/parts/language-notes.md')));
});

test('every word has an entry with its meaning and its example', () => {
  const text = languageReference(vocabulary, '');
  for (const { word, meaning, example } of vocabulary.words) {
    expect(text).toContain(`### ${word}\n`);
    expect(text).toContain(meaning);
    expect(text).toContain(example);
  }
});
