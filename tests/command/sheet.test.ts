import { existsSync } from 'node:fs';
import { describe, expect, test, vi } from 'vitest';
import { Shop } from './shop';

// Fonts are opened for each PDF, which takes a second or two on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const shop = Shop.withSamples();
const split = 'changeout-split.jobplan';
const sheet = (...words: readonly string[]) => shop.type('sheet', split, ...words);

describe('what is made', () => {
  test('text, in pages, if nothing is said', async () => {
    const { out, status, said } = await sheet();
    expect(out).toContain('Plan tansy-row-14, revision 2');
    expect(out).toMatch(/Page 1 of \d+/);
    expect([status, said]).toEqual([0, '']);
  });
  test('one page of HTML', async () => {
    const { out } = await sheet('--as', 'html', '--paper', 'a4');
    expect(out.startsWith('<!DOCTYPE html>')).toBe(true);
    expect(out.toLowerCase()).toContain('size: a4');
  });
  test.each([
    ['letter', '612', '792'],
    ['a4', '595', '841'],
  ])('PDF on %s', async (paper, width, height) => {
    const { bytes, status } = await sheet('--as', 'pdf', '--paper', paper);
    const text = Buffer.from(bytes).toString('latin1');
    expect(text.startsWith('%PDF-')).toBe(true);
    // Sizes in points: ANSI/ASME Y14.1 size A, and ISO 216.
    expect(text).toMatch(new RegExp(`/MediaBox \\[0 0 ${width}(\\.\\d+)? ${height}(\\.\\d+)?\\]`));
    expect(status).toBe(0);
  });
  test('workings only when they are asked for', async () => {
    const plain = (await sheet()).out;
    const shown = (await sheet('--workings')).out;
    expect(plain).not.toMatch(/^WORKINGS$/m);
    expect(shown).toMatch(/^WORKINGS$/m);
  });
  test('in SI', async () => {
    expect((await sheet('--units', 'si')).out).not.toBe((await sheet()).out);
  });
});

describe('where it goes', () => {
  test.each([
    ['job.pdf', '%PDF-'],
    ['job.html', '<!DOCTYPE html>'],
    ['job.txt', '14 Tansy Row'],
  ])('into %s, in the form of its ending', async (file, head) => {
    expect(await sheet('--out', file)).toMatchObject({ status: 0, out: '' });
    expect(shop.read(file).startsWith(head)).toBe(true);
  });
  test('--as counts more than the ending', async () => {
    await sheet('--as', 'text', '--out', 'odd.html');
    expect(shop.read('odd.html').startsWith('14 Tansy Row')).toBe(true);
  });
  test('the same plan gives the same file, wherever it lies', async () => {
    const other = Shop.withSamples();
    expect((await other.type('sheet', split, '--as', 'html')).out).toBe((await sheet('--as', 'html')).out);
  });
});

test('a plan with an error is printed and barred, and the status says so', async () => {
  const spoilt = Shop.withSamples();
  spoilt.write(split, spoilt.read(split).replace('  circuit {', '  circuit {\n    widget new'));
  const ended = await spoilt.type('sheet', split);
  expect(ended.out).toContain('NOT FOR WORK');
  expect(ended.status).toBe(1);
  expect(ended.said).toContain('jobplan check');
});

test('standard input', async () => {
  const ended = await shop.typeWith({ typed: shop.read(split) }, 'sheet', '-');
  expect(ended.out).toContain('Plan tansy-row-14, revision 2');
});

describe('wrong usage', () => {
  test.each([
    [['--as', 'docx'], 'Allowed choices are text, html, pdf'],
    [['--paper', 'a3'], 'Allowed choices are letter, a4'],
    [['--out', 'house.jobplan'], 'a sheet is not written over a plan'],
    [['--out', 'no/such/folder.txt'], 'no/such/folder.txt is not there.'],
  ])('%j', async (words, message) => {
    const before = shop.read('house.jobplan');
    const ended = await sheet(...words);
    expect(ended).toMatchObject({ status: 2, out: '' });
    expect(ended.said).toContain(message);
    expect(shop.read('house.jobplan')).toBe(before);
  });
  test('a PDF for the terminal', async () => {
    const ended = await shop.typeWith({ outIsTerminal: true }, 'sheet', split, '--as', 'pdf');
    expect(ended).toMatchObject({ status: 2, out: '' });
    expect(existsSync(shop.path('sheet.pdf'))).toBe(false);
  });
});
