import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { CheckReport } from '../../server/command/shapes/check';
import { type Ended, json, Shop } from './shop';

const clean = 'house-rules strict "Rules" {\n}\n';
const wrong = 'blok one "One" {\n}\n';

/** `file line:character-line:character name`, as the JSON has it. */
const brief = (ended: Ended): readonly string[] =>
  (json(ended) as CheckReport).findings.map(
    ({ file, name, range: { start, end } }) =>
      `${file} ${start.line}:${start.character}-${end.line}:${end.character} ${name}`,
  );

describe('what is looked at', () => {
  const shop = new Shop({
    'a.jobplan': wrong,
    'jobs/b.jobplan': wrong,
    'jobs/node_modules/c.jobplan': wrong,
    'dist/d.jobplan': wrong,
    '.git/e.jobplan': wrong,
    'jobs/notes.txt': wrong,
  });
  const both = ['a.jobplan 0:0-0:4 unknown-word', 'jobs/b.jobplan 0:0-0:4 unknown-word'];
  test.each<[string, readonly string[], readonly string[]]>([
    ['the current folder if nothing is said', [], both],
    ['a folder', ['jobs'], both.slice(1)],
    ['a file', ['a.jobplan'], both.slice(0, 1)],
    ['a folder and a file in it, once', ['jobs', 'jobs/b.jobplan'], both.slice(1)],
    ['a folder and one around it, each file once', ['jobs', '.'], both],
    [
      'a file in a folder that is passed by, if it is named',
      ['dist/d.jobplan'],
      ['dist/d.jobplan 0:0-0:4 unknown-word'],
    ],
  ])('%s', async (_, words, found) => {
    const ended = await shop.type('check', ...words, '--format', 'json');
    expect(brief(ended)).toEqual(found);
    expect(ended.status).toBe(1);
  });

  test('standard input stands for a file of the current folder', async () => {
    const ended = await shop.typeWith({ typed: `use "jobs/b.jobplan"\n${wrong}` }, 'check', '-', '--format', 'json');
    expect(brief(ended)).toEqual(['- 1:0-1:4 unknown-word']);
  });

  test('an empty folder has no findings', async () => {
    expect(await new Shop().type('check')).toMatchObject({ status: 0, out: 'No findings in 0 files.\n', said: '' });
  });
});

describe('nothing outside the folder is read', () => {
  const outside = mkdtempSync(join(tmpdir(), 'jobplan-outside-'));
  const secret = 'plan secret "Secret" {\n}\n';
  writeFileSync(join(outside, 'secret.jobplan'), secret);
  const shop = new Shop({
    'up.jobplan': `use "../${outside.split('/').at(-1)}/secret.jobplan"\n`,
    'linked.jobplan': 'use "link/secret.jobplan"\nuse "alias.jobplan"\n',
    'jobs/above.jobplan': 'use "../up.jobplan"\n',
  });
  symlinkSync(outside, shop.path('link'));
  symlinkSync(join(outside, 'secret.jobplan'), shop.path('alias.jobplan'));

  test('by a path that climbs', async () => {
    expect(brief(await shop.type('check', 'up.jobplan', '--format', 'json'))).toEqual([
      expect.stringContaining('unusable-path'),
    ]);
  });
  test('by a link to a folder or a file', async () => {
    const found = brief(await shop.type('check', 'linked.jobplan', '--format', 'json'));
    expect(found).toEqual([expect.stringContaining('missing-file'), expect.stringContaining('missing-file')]);
  });
  test('by a link that is named itself', async () => {
    const ended = await shop.type('check', 'alias.jobplan');
    expect(ended).toMatchObject({ status: 2, out: '' });
    expect(ended.said).toContain('nothing outside it is read');
  });
  test('by a link that lies in the folder that is walked', async () => {
    expect((await shop.type('check', '--format', 'json')).out).not.toContain('secret "');
  });
  test('a folder that is given is the limit for the files in it, not the current one', async () => {
    expect(brief(await shop.type('check', 'jobs', '--format', 'json'))).toEqual([
      expect.stringContaining('unusable-path'),
    ]);
    expect(brief(await shop.type('check', 'jobs/above.jobplan', 'jobs', '--format', 'json'))).toEqual([
      expect.stringContaining('unusable-path'),
    ]);
    expect(brief(await shop.type('check', 'jobs/above.jobplan', '--format', 'json'))).toEqual([]);
  });
  test('a file that lies elsewhere has its own folder', async () => {
    const ended = await shop.type('check', join(outside, 'secret.jobplan'), '--format', 'json');
    expect((json(ended) as CheckReport).findings.every(({ file }) => file === join(outside, 'secret.jobplan'))).toBe(
      true,
    );
    rmSync(outside, { recursive: true });
  });
});

describe('what cannot be read', () => {
  const shop = new Shop({ 'notes.txt': wrong, 'good.jobplan': clean });
  mkdirSync(shop.path('folder.jobplan'));
  test.each([
    ['a file that is not there', 'gone.jobplan', 'gone.jobplan is not there.'],
    ['a file in a file', 'notes.txt/x.jobplan', 'notes.txt/x.jobplan lies in something that is no folder.'],
    ['another kind of file', 'notes.txt', 'notes.txt is no .jobplan file.'],
    ['a device', '/dev/null', '/dev/null is no file.'],
  ])('%s', async (_, word, message) => {
    expect(await shop.type('check', 'good.jobplan', word)).toMatchObject({
      status: 2,
      out: '',
      said: `jobplan: ${message}\n`,
    });
  });
  test('a folder that is called like a file is a folder', async () => {
    expect(await shop.type('check', 'folder.jobplan')).toMatchObject({ status: 0, out: 'No findings in 0 files.\n' });
  });
  test('bytes that are no text are findings, not a crash', async () => {
    const bytes = new Shop({ 'bytes.jobplan': new Uint8Array([0xff, 0xfe, 0x00, 0x80, 0x0a]) });
    expect((await bytes.type('check')).status).toBe(1);
  });
});

describe('the text for people', () => {
  const shop = new Shop({ 'a.jobplan': `${clean}\n\tblok one "One" {\n}\n` });
  test('says where, what, shows the line and counts', async () => {
    const { out, status } = await shop.type('check');
    const lines = out.split('\n');
    expect(lines[0]).toBe('a.jobplan:4:2 error unknown-word');
    expect(lines.slice(2, 4)).toEqual(['  4 | \tblok one "One" {', '    | \t^^^^']);
    expect(lines.at(-2)).toBe('1 error in 1 file.');
    expect(status).toBe(1);
  });
  test('related places stand under it', async () => {
    const twice = new Shop({ 'a.jobplan': `${clean}${clean}` });
    expect((await twice.type('check')).out).toContain('\n  a.jobplan:1:13 the first one\n');
  });
  test('no colour but on a terminal, and none where NO_COLOR is set', async () => {
    const coloured = '\u001b[';
    expect((await shop.type('check')).out).not.toContain(coloured);
    expect((await shop.typeWith({ outIsTerminal: true }, 'check')).out).toContain(coloured);
    expect((await shop.typeWith({ outIsTerminal: true, environment: { NO_COLOR: '1' } }, 'check')).out).not.toContain(
      escape,
    );
    expect((await shop.typeWith({ outIsTerminal: true, environment: { TERM: 'dumb' } }, 'check')).out).not.toContain(
      escape,
    );
  });
});

describe('other formats', () => {
  const shop = new Shop({ 'jobs/a b.jobplan': `${clean}${clean}` });
  test('annotations: one line each, counted from one, special signs escaped', async () => {
    expect((await shop.type('check', '--format', 'annotations')).out.split('\n')).toEqual([
      expect.stringMatching(
        /^::error file=jobs\/a b\.jobplan,line=3,endLine=3,col=13,endColumn=19,title=duplicate-name::There are two .*%0Ajobs\/a b\.jobplan:1 the first one$/,
      ),
      '',
    ]);
  });
  test('SARIF 2.1.0: rules, places from one, related places', async () => {
    const log = json(await shop.type('check', '--format', 'sarif')) as {
      version: string;
      runs: { tool: { driver: { rules: { id: string }[] } }; results: unknown[] }[];
    };
    expect(log.version).toBe('2.1.0');
    expect(log.runs[0]!.tool.driver.rules.map(({ id }) => id)).toEqual(['duplicate-name']);
    expect(log.runs[0]!.results).toEqual([
      {
        ruleId: 'duplicate-name',
        ruleIndex: 0,
        level: 'error',
        message: { text: expect.stringContaining('two') },
        locations: [
          {
            physicalLocation: {
              artifactLocation: { uri: 'jobs/a%20b.jobplan' },
              region: { startLine: 3, startColumn: 13, endLine: 3, endColumn: 19 },
            },
          },
        ],
        relatedLocations: [
          {
            id: 0,
            message: { text: 'the first one' },
            physicalLocation: {
              artifactLocation: { uri: 'jobs/a%20b.jobplan' },
              region: { startLine: 1, startColumn: 13, endLine: 1, endColumn: 19 },
            },
          },
        ],
      },
    ]);
  });
});

describe('--fail-on', () => {
  // A plan without steps is a warning.
  const idle = 'plan one "One" {\n}\n';
  test.each([
    [wrong, 'error', 1],
    [wrong, 'information', 1],
    [idle, 'error', 0],
    [idle, 'warning', 1],
    [idle, 'information', 1],
    [clean, 'information', 0],
  ])('%j %s: %i', async (text, severity, status) => {
    expect((await new Shop({ 'a.jobplan': text }).type('check', '--fail-on', severity)).status).toBe(status);
  });
});

describe('--today', () => {
  const split = 'changeout-split.jobplan';
  const shop = Shop.withSamples();
  shop.write('undated.jobplan', shop.read(split).replace(/^ *date .*\n/m, ''));
  // The cylinder that the plan brings is to be retested by June 2029.
  test.each([
    ['undated.jobplan', '2029-06-30', false],
    ['undated.jobplan', '2029-07-01', true],
    [split, '2029-07-01', false],
  ])('%s on %s', async (file, today, past) => {
    const { out } = await shop.type('check', file, '--today', today, '--format', 'json');
    expect(out.includes('recovery-cylinder-past-retest')).toBe(past);
  });
  test('is the real one if nothing is said', async () => {
    const { out } = await shop.typeWith({ today: () => '2035-01-01' }, 'check', 'undated.jobplan', '--format', 'json');
    expect(out).toContain('recovery-cylinder-past-retest');
  });
});

test.each([
  ['an unknown option', ['--fail-in', 'error'], '--fail-on'],
  ['an unknown format', ['--format', 'xml'], 'Allowed choices are text, json, sarif, annotations'],
  ['an unknown severity', ['--fail-on', 'fatal'], 'Allowed choices are error, warning, information'],
  ['a day that is none', ['--today', '2027-02-30'], 'Write a day as 2027-05-18.'],
])('wrong usage: %s', async (_, words, hint) => {
  const ended = await new Shop().type('check', ...words);
  expect(ended).toMatchObject({ status: 2, out: '' });
  expect(ended.said).toContain(hint);
});
