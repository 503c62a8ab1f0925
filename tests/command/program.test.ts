import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { Shop } from './shop';

vi.setConfig({ testTimeout: 60_000 });

// The program as one runs it: its own process, its own standard streams.
const folder = mkdtempSync(join(tmpdir(), 'jobplan-program-'));
const program = join(folder, 'jobplan.js');
beforeAll(async () => {
  await build({
    absWorkingDir: join(import.meta.dirname, '../..'),
    entryPoints: ['server/command/main.ts'],
    outfile: program,
    bundle: true,
    platform: 'node',
    target: 'node20',
    loader: { '.ttf': 'empty' },
    logLevel: 'error',
    define: { 'import.meta.url': '"file:///"' },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

const shop = new Shop({ 'a.jobplan': 'blok one "One" {\n}\n' });
const start = (words: readonly string[], input = '') =>
  spawnSync(process.execPath, [program, ...words], { cwd: shop.folder, input, encoding: 'utf8' });

test('results go to standard output, messages to standard error, the status to the caller', () => {
  const { status, stdout, stderr } = start(['check']);
  expect(stdout).toContain('a.jobplan:1:1 error unknown-word');
  expect([status, stderr]).toEqual([1, '']);
  const wrong = start(['check', 'gone.jobplan']);
  expect([wrong.status, wrong.stdout, wrong.stderr]).toEqual([2, '', 'jobplan: gone.jobplan is not there.\n']);
});

test('standard input is read to its end', () => {
  const text = `${'# a line of no meaning\n'.repeat(20_000)}blok one "One" {\n}\n`;
  const { status, stdout } = start(['check', '-', '--format', 'json'], text);
  expect(status).toBe(1);
  expect(
    JSON.parse(stdout).findings.map(({ file, range }: { file: string; range: { start: { line: number } } }) => [
      file,
      range.start.line,
    ]),
  ).toEqual([['-', 20_000]]);
});

test('an output that is long is whole when it goes into a pipe', () => {
  const long = new Shop();
  long.write('many.jobplan', Array.from({ length: 4000 }, (_, n) => `wrong-${n}\n`).join(''));
  const { stdout, status } = spawnSync(process.execPath, [program, 'check', '--format', 'json'], {
    cwd: long.folder,
    encoding: 'utf8',
    maxBuffer: 1e8,
  });
  expect(status).toBe(1);
  expect(JSON.parse(stdout).findings.length).toBeGreaterThanOrEqual(4000);
});

test('a reader that goes away early is no fault', () => {
  const samples = Shop.withSamples();
  const line = `"${process.execPath}" "${program}" state rack-conversion.jobplan --format json | head -c 10`;
  const { stdout, stderr } = spawnSync('sh', ['-c', line], { cwd: samples.folder, encoding: 'utf8' });
  expect(stdout).toBe('{\n  "versi');
  expect(stderr).toBe('');
});
