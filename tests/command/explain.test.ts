import { describe, expect, test } from 'vitest';
import type { ExplainReport } from '../../server/command/shapes/explain';
import { checks } from '../../server/engine/checks/all';
import { relations } from '../../server/engine/takeoff/figures';
import { vocabulary } from '../../server/engine/vocabulary';
import { json, Shop } from './shop';

const shop = new Shop();
const pages = async (name: string): Promise<ExplainReport['pages']> =>
  (json(await shop.type('explain', name, '--format', 'json')) as ExplainReport).pages;

describe('every name has a page', () => {
  test('every check, with meaning, reason, both examples and source', async () => {
    for (const { name, meaning, why, source } of checks) {
      const page = (await pages(name)).find(({ kind }) => kind === 'check')!;
      const texts = page.sections.map(({ text }) => text).join('\n');
      for (const piece of [meaning, why, source]) expect(texts).toContain(piece);
      expect(texts).not.toContain('<- here');
    }
  });
  test('every word of the language, with its form and an example', async () => {
    for (const { word, meaning, example } of vocabulary.words) {
      const own = (await pages(word)).filter(({ kind, title }) => kind === 'word' && title === meaning);
      expect(own.length, word).toBeGreaterThan(0);
      expect(own[0]!.sections.find(({ heading }) => heading === 'Example')!.text).toBe(example);
    }
  });
  test('every figure, with formula and sources', async () => {
    for (const { name, formula } of relations) {
      const page = (await pages(name)).find(({ kind }) => kind === 'figure')!;
      expect(page.sections[0]).toEqual({ heading: 'Formula', text: formula });
    }
  });
});

test('the text of a check', async () => {
  const { out, status } = await shop.type('explain', 'open-under-pressure');
  expect(out.startsWith('open-under-pressure (check)\n')).toBe(true);
  for (const heading of ['Severity', 'What it means', 'Why it matters', 'Wrong', 'Source'])
    expect(out).toContain(`\n${heading}\n  `);
  expect(status).toBe(0);
});

test.each([
  ['open-under-presure', 'perhaps "open-under-pressure" is meant'],
  ['line-volum', 'perhaps "line-volume" is meant'],
  ['prge', 'perhaps "purge" is meant'],
  ['constructor', 'There is nothing called "constructor"'],
  ['', 'There is nothing called ""'],
])('an unknown name: %j', async (name, message) => {
  const ended = await shop.type('explain', name);
  expect(ended).toMatchObject({ status: 2, out: '' });
  expect(ended.said).toContain(message);
});
