import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { bundledFonts } from '../../../server/command/pdf/fonts';
import { printPdf } from '../../../server/command/pdf/pdf';
import { reading, step } from '../../../server/engine/procedure/construct';
import type { Paper, Procedure } from '../../../server/engine/procedure/document';
import { sentence } from '../../../server/engine/procedure/sentence';
import { barred, hostile, quillbrook, withWorkings } from '../../engine/procedure/fixture';

// The text of a PDF is read back with poppler's pdftotext; where it is not installed only the file itself is tested.
const reader = spawnSync('pdftotext', ['-v']).error === undefined;
const needsReader = reader ? '' : ' (skipped: pdftotext is not installed)';

// Opening the fonts takes a second or two on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const folder = mkdtempSync(join(tmpdir(), 'sheet-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Files already printed: many tests look at the same sheet. */
const printed = new Map<string, Promise<Uint8Array>>();

function fileOf(procedure: Procedure, paper: Paper): Promise<Uint8Array> {
  const key = `${paper} ${JSON.stringify(procedure)}`;
  const file = printed.get(key) ?? printPdf(procedure, paper, bundledFonts);
  printed.set(key, file);
  return file;
}

/** Text of each page, as it stands there. */
async function pagesOf(procedure: Procedure, paper: Paper): Promise<readonly string[]> {
  const file = join(folder, 'sheet.pdf');
  writeFileSync(file, await fileOf(procedure, paper));
  const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
  return text.replace(/\f$/, '').split('\f');
}

const latin = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');

describe('the file', () => {
  test('is the same for the same plan, and carries the plan’s date, title and shop', async () => {
    const once = await fileOf(quillbrook, 'letter');
    expect(Buffer.compare(once, await printPdf(quillbrook, 'letter', bundledFonts))).toBe(0);
    expect(latin(once)).toContain('D:20270518000000Z');
    expect(latin(once)).toContain('larkfield-9, revision 3');
  });

  // Letter is 8-1/2 x 11 in of 72 points; A4 is 210 x 297 mm (ISO 216).
  test.each([
    ['letter', [612, 792]],
    ['a4', [595.28, 841.89]],
  ] as const)('paper %s has its size', async (paper, [width, height]) => {
    const sizes = [...latin(await fileOf(quillbrook, paper)).matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
    expect(sizes.length).toBeGreaterThan(3);
    for (const size of sizes) {
      expect(Number(size[1])).toBeCloseTo(width, 1);
      expect(Number(size[2])).toBeCloseTo(height, 1);
    }
  });

  test('embeds both cuts of its fonts and uses no other', async () => {
    const file = latin(await fileOf(quillbrook, 'a4'));
    const fonts = new Set([...file.matchAll(/\/FontName \/[A-Z]+\+(\S+)/g)].map((match) => match[1]));
    expect(fonts).toEqual(new Set(['DejaVuSansCondensed', 'DejaVuSansCondensed-Bold']));
    expect(file.match(/\/FontFile2/g)).toHaveLength(2);
    expect(file).not.toContain('Helvetica');
  });
});

describe.skipIf(!reader)(`the pages${needsReader}`, () => {
  test.each(['letter', 'a4'] as const)('%s: head, number and foot on each', async (paper) => {
    const pages = await pagesOf(withWorkings, paper);
    for (const [n, page] of pages.entries()) {
      expect(page).toContain('9 Larkfield Court, downstairs air conditioner');
      expect(page).toContain('Quillbrook Refrigeration');
      expect(page).toContain('Plan larkfield-9, revision 3');
      expect(page).toContain('Standard line-set-reuse, revision 4');
      expect(page).toContain('Dated 2027-05-18 · Content ba7816bf');
      expect(page).toContain(`Page ${n + 1} of ${pages.length}`);
      expect(page).toContain('Print again if the revision on file is higher.');
      expect(page).toContain('Local code and the authority come first');
      expect(page).not.toContain('NOT FOR WORK');
    }
    expect(pages.length).toBeGreaterThan(4);
    expect(pages.at(-1)).toContain('Workings');
  });

  test('a draft is barred on each', async () => {
    for (const page of await pagesOf(barred, 'letter')) expect(page.trimStart()).toMatch(/^NOT FOR WORK: 2 errors/);
  });

  test.each(['letter', 'a4'] as const)(
    '%s: a step stands on one page from its number to what to do if it fails',
    async (paper) => {
      const pages = await pagesOf(quillbrook, paper);
      for (const [first, last] of [
        ['Recover the system', 'Weight in'],
        ['Wait and read again', 'back to step 3; at most 3 times'],
        ['Flush with shop-flush', '5: Oil and solvent out'],
        ['Pressure test with nitrogen', 'back to step 11; at most'],
        ['HOLD 10', 'Seen by lead'],
        ['Acid test of the oil', 'Suction drier'],
      ] as const) {
        const page = pages.find((one) => one.includes(first));
        expect(page, first).toContain(last);
      }
    },
  );

  test.each(['letter', 'a4'] as const)('%s: no heading stands alone at the foot', async (paper) => {
    const headings = [
      'Materials',
      'Tools',
      'Protection and paper',
      'Circuit',
      'Steps',
      'Clean the lines',
      'Prove',
      'Put back',
      'Signatures',
    ];
    for (const page of await pagesOf(quillbrook, paper)) {
      const lines = page
        .split('\n')
        .map((line) => line.trim())
        .filter((line) => line !== '');
      const foot = lines.findIndex((line) => line.startsWith('Units:'));
      expect(headings).not.toContain(lines[foot - 1]);
    }
  });

  test('signs of the trade come out', async () => {
    const text = (await pagesOf(quillbrook, 'letter')).join('\n');
    for (const sign of ['°F', 'Δ°F', '±', '’', '←', '·']) expect(text).toContain(sign);
  });

  test('a step higher than a page is parted between its lines, and loses none', async () => {
    const lines = Array.from({ length: 60 }, (_, n) => reading(`Reading ${n + 1}`, 'psig', 'at most 5 psig'));
    const pages = await pagesOf({ ...quillbrook, steps: [step('1', 'long', 'Read them all', { lines })] }, 'letter');
    for (let n = 1; n <= 60; n++)
      expect(pages.filter((page) => new RegExp(`Reading ${n} `).test(page))).toHaveLength(1);
  });

  test('texts of any length and sign are printed within the page', async () => {
    const long = 'w'.repeat(400);
    const wild: Procedure = {
      ...quillbrook,
      head: { ...quillbrook.head, job: `${hostile} ${long}`, date: 'someday' },
      steps: [
        step('1', 'wild', `${hostile} ${long}`, {
          aim: sentence(long),
          each: [long],
          cautions: [sentence(long)],
          lines: [reading(long, [{ lead: long, unit: long }], long)],
        }),
        { kind: 'hold', id: 'h', line: null, number: '2', see: sentence(long), by: long },
      ],
    };
    const text = (await pagesOf(wild, 'a4')).join('\n');
    expect(text).toContain('<script>');
    expect(text).toContain('HOLD 2');
  });
});
