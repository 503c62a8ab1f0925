import { describe, expect, test } from 'vitest';
import type { Procedure } from '../../../server/engine/procedure/document';
import { escaped } from '../../../server/engine/procedure/html/escape';
import { printHtml } from '../../../server/engine/procedure/html/html';
import { sheetStyle } from '../../../server/engine/procedure/html/style';
import { barred, hostile, quillbrook, withWorkings } from './fixture';

/** Puts a text in place of every text of a document, however deep. */
function filledWith(value: unknown, text: string): unknown {
  if (typeof value === 'string') return text;
  if (Array.isArray(value)) return value.map((one) => filledWith(one, text));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, one]) => {
      // Words that choose between forms are no texts of a person.
      const choice = ['kind', 'style', 'fill', 'anchor'].includes(key);
      return [key, choice ? one : filledWith(one, text)];
    }),
  );
}

const voidTags = new Set(['meta', 'col', 'br', 'path', 'polyline', 'polygon', 'circle', '!DOCTYPE']);

/** Names the first tag that is closed out of turn, or what stays open. */
function unbalanced(html: string): string | null {
  const open: string[] = [];
  for (const [whole, close, tag, self] of html.matchAll(/<(\/?)([!a-zA-Z][a-zA-Z0-9]*)(?:"[^"]*"|[^">])*?(\/?)>/g)) {
    if (close === '/') {
      if (open.pop() !== tag) return whole;
    } else if (self !== '/' && !voidTags.has(tag!)) open.push(tag!);
  }
  return open.at(-1) ?? null;
}

describe('HTML', () => {
  test.each([
    ['<b>', '&lt;b&gt;'],
    [`a & "b" 'c'`, 'a &amp; &quot;b&quot; &#39;c&#39;'],
    ['bell \u0007', 'bell \ufffd'],
    ['half a pair \ud83d', 'half a pair \ufffd'],
    ['Δ°F ≤ 5 µm', 'Δ°F ≤ 5 µm'],
  ])('escapes %j', (text, expected) => expect(escaped(text)).toBe(expected));

  test('is well formed and holds no script and nothing to fetch', () => {
    const html = printHtml(withWorkings);
    expect(unbalanced(html)).toBeNull();
    expect(html).not.toMatch(/<script|javascript:|\son\w+=|https?:|<img|<link|@import|url\(/i);
    expect(html).toContain(`content="default-src 'none'; style-src 'unsafe-inline'"`);
  });

  test('text of a plan stays text wherever it stands', () => {
    const html = printHtml(filledWith(withWorkings, hostile) as Procedure);
    expect(html).not.toContain('<script');
    expect(html).not.toContain('"x"');
    expect(unbalanced(html)).toBeNull();
    expect(html.split('&lt;script&gt;').length).toBeGreaterThan(150);
  });

  test('steps and holds carry their number, their id and their line', () => {
    const html = printHtml(quillbrook);
    for (let number = 1; number <= 15; number++) expect(html).toContain(`data-step="${number}"`);
    expect(html).toContain('<section class="step" data-step="11" id="test" data-line="45">');
    expect(html).toContain('<section class="hold" data-step="10" id="cloth" data-line="41">');
    expect(html).toContain('<a href="#recover">back to step 3; at most 3 times');
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('only a draft is barred', () => {
    expect(printHtml(barred)).toContain('NOT FOR WORK: 2 errors');
    expect(printHtml(quillbrook)).not.toContain('NOT FOR WORK');
  });

  test.each([
    ['letter', 'size: letter portrait; margin: 15mm'],
    ['a4', 'size: A4 portrait; margin: 15mm'],
  ] as const)('paper %s', (paper, rule) => expect(printHtml(quillbrook, paper)).toContain(rule));

  test('prints black on white with no type under 9 pt; the screen may have the editor’s colours', () => {
    const sizes = [...sheetStyle.matchAll(/(?:font-size|font): ?([\d.]+)pt/g)].map((match) => Number(match[1]));
    expect(Math.min(...sizes)).toBe(9);
    expect(sheetStyle).toMatch(/@media print \{\s*:root \{ --ink: #000; --sheet: #fff; \}/);
    const colours = [...sheetStyle.matchAll(/#[0-9a-f]{3,6}\b/g)].map((match) => match[0]);
    expect(new Set(colours)).toEqual(new Set(['#000', '#fff']));
  });
});
