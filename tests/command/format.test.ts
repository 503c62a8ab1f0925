import { chmodSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { json, Shop } from './shop';

const loose = 'plan   one "One" {\n      revision 2 # kept\n}\n';
const laidOut = 'plan one "One" {\n  revision 2 # kept\n}\n';

describe('in place', () => {
  test('what is laid out otherwise is written and named, and nothing else', async () => {
    const shop = new Shop({ 'a.jobplan': loose, 'b.jobplan': laidOut, 'jobs/c.jobplan': loose });
    expect(await shop.type('format')).toMatchObject({ status: 0, out: 'a.jobplan\njobs/c.jobplan\n', said: '' });
    for (const file of ['a.jobplan', 'b.jobplan', 'jobs/c.jobplan']) expect(shop.read(file)).toBe(laidOut);
    expect(await shop.type('format')).toMatchObject({ status: 0, out: '' });
  });
  test('one file alone', async () => {
    const shop = new Shop({ 'a.jobplan': loose, 'b.jobplan': loose });
    await shop.type('format', 'b.jobplan');
    expect([shop.read('a.jobplan'), shop.read('b.jobplan')]).toEqual([loose, laidOut]);
  });
  test('a byte-order mark and line ends stay', async () => {
    const windows = `\uFEFF${loose.replaceAll('\n', '\r\n')}`;
    const shop = new Shop({ 'a.jobplan': windows });
    await shop.type('format');
    expect(shop.read('a.jobplan')).toBe(`\uFEFF${laidOut.replaceAll('\n', '\r\n')}`);
  });
});

describe('--check', () => {
  test('writes nothing and says which', async () => {
    const shop = new Shop({ 'a.jobplan': loose, 'b.jobplan': laidOut });
    expect(await shop.type('format', '--check')).toMatchObject({ status: 1, out: 'a.jobplan is laid out otherwise\n' });
    expect(shop.read('a.jobplan')).toBe(loose);
    expect(await shop.type('format', '--check', 'b.jobplan')).toMatchObject({ status: 0, out: '' });
  });
});

test('as JSON', async () => {
  const shop = new Shop({ 'a.jobplan': loose, 'b.jobplan': laidOut });
  expect(json(await shop.type('format', '--check', '--format', 'json'))).toEqual({
    version: 1,
    files: [
      { file: 'a.jobplan', changed: true },
      { file: 'b.jobplan', changed: false },
    ],
  });
});

describe('standard input', () => {
  const shop = new Shop();
  test('goes to standard output', async () => {
    expect(await shop.typeWith({ typed: loose }, 'format', '-')).toMatchObject({ status: 0, out: laidOut });
    expect(await shop.typeWith({ typed: laidOut }, 'format', '-')).toMatchObject({ status: 0, out: laidOut });
  });
  test('with --check only the status and a line say so', async () => {
    expect(await shop.typeWith({ typed: loose }, 'format', '-', '--check')).toMatchObject({
      status: 1,
      out: '- is laid out otherwise\n',
    });
  });
});

describe('what must not be written', () => {
  test('bytes that are no text stay as they are', async () => {
    const bytes = new Uint8Array([...Buffer.from('plan   one "'), 0xe9, ...Buffer.from('" {\n}\n')]);
    const shop = new Shop({ 'a.jobplan': bytes, 'b.jobplan': loose });
    const ended = await shop.type('format');
    expect(ended).toMatchObject({ status: 2, out: 'b.jobplan\n' });
    expect(ended.said).toContain('a.jobplan is no UTF-8 text');
    expect(shop.read('a.jobplan')).toContain('plan   one');
  });
  test.skipIf(process.getuid?.() === 0)('a file that is not yours to write is said to be', async () => {
    const shop = new Shop({ 'a.jobplan': loose });
    chmodSync(shop.path('a.jobplan'), 0o444);
    expect(await shop.type('format')).toMatchObject({
      status: 2,
      said: 'jobplan: a.jobplan may not be read or written by you.\n',
    });
  });
});
