import { describe, expect, test } from 'vitest';
import { step } from '../../../server/engine/procedure/construct';
import type { Procedure } from '../../../server/engine/procedure/document';
import { printText } from '../../../server/engine/procedure/text/text';
import { barred, hostile, quillbrook, withWorkings } from './fixture';

const pagesOf = (procedure: Procedure, lines = 60) =>
  printText(procedure, lines)
    .replace(/\n$/, '')
    .split('\n\f')
    .map((page) => page.split('\n'));

/** The lines of the one-page print from the one that holds `first` on, as many as the expectation has. */
function expectLines(procedure: Procedure, first: string, expected: string): void {
  const lines = printText(procedure, null).split('\n');
  const start = lines.findIndex((line) => line.includes(first));
  expect(start, `"${first}" is not in the print`).toBeGreaterThan(-1);
  const wanted = expected.replace(/^\n|\n *$/g, '').split('\n');
  expect(lines.slice(start, start + wanted.length)).toEqual(wanted);
}

describe('plain text', () => {
  // The form is that of the sample step of the sheet's description: box, number, sentence, aim at the right; caution
  // before the action; stages; blanks with unit, limit and time; what to do if it fails.
  test('a step with everything', () => {
    expectLines(
      quillbrook,
      'Pressure test with nitrogen',
      `
 [ ] 11  Pressure test with nitrogen: liquid line, drier, coil, suction line by lead
                                                                to 450 psig (3103 kPa gauge), 30 min
         /!\\ Stored energy. Stand aside of caps and hose ends. Relief set 455 to 480 psig. No repair
             under pressure.
         Reach in stages: 10 psig [ ]   150 psig [ ]   300 psig [ ]   450 psig [ ]
         Start  ________ psig at ________ °F  450 psig (3103 kPa gauge)                   time _____
         End    ________ psig at ________ °F  at most 2 psi* (14 kPa) from the reading    time _____
                                              if tight
         Reading if tight: start 450 psig; +0.9 psi* (+6 kPa) for each Δ°F warmer, as much less
         colder.
         Fails: find it at 10 psig with bubbles, let down outdoors, remake, back to step 11; at most
         3 times, then stop and call.
`,
    );
  });

  test('rounds: a box for each round and line, a blank for each round up to the most', () => {
    expectLines(
      quillbrook,
      '+== Rounds',
      `
+== Rounds until the solvent runs clear: at least 2, at most 5 times

|  [ ] 7   Flush with shop-flush into the container                        18 fl-oz* (0.53 L) a pass
|          /!\\ Flammable solvent vapour. No flame or spark within 10 ft; keep the attic fan on.
|          liquid-line: round 1 [ ]   2 [ ]   if needed 3 [ ]   4 [ ]   5 [ ]
|          suction-line: round 1 [ ]   2 [ ]   if needed 3 [ ]   4 [ ]   5 [ ]
|          Time: liquid-line 70 s*, suction-line 95 s*
|          1: Oil and solvent out  ________ fl-oz  at least 16 fl-oz* of each pass
|          2: Oil and solvent out  ________ fl-oz  at least 16 fl-oz* of each pass
|          3: Oil and solvent out  ________ fl-oz  at least 16 fl-oz* of each pass
|          4: Oil and solvent out  ________ fl-oz  at least 16 fl-oz* of each pass
|          5: Oil and solvent out  ________ fl-oz  at least 16 fl-oz* of each pass

|  [ ] 8   Purge into the container                              at 50 psig (345 kPa gauge) for 15 s
|          liquid-line: round 1 [ ]   2 [ ]   if needed 3 [ ]   4 [ ]   5 [ ]
|          suction-line: round 1 [ ]   2 [ ]   if needed 3 [ ]   4 [ ]   5 [ ]
+-- End of the round: again from its top, or go on.
`,
    );
  });

  test('a hold over the whole width', () => {
    expectLines(
      quillbrook,
      '+====',
      `
+==================================================================================================+
| HOLD 10: Lead sees the last flush from each line: cloth clean, no smell                          |
|                                                                                                  |
| Seen by lead: ______________________   date ____________   time ________                         |
+==================================================================================================+
`,
    );
  });

  test('a visit asks for its date', () => {
    expect(printText(quillbrook, null)).toMatch(/The crew comes back: Acid and drier, within 2 days +date _{12}/);
  });

  test('every page has its head, its number and its foot', () => {
    const pages = pagesOf(quillbrook);
    expect(pages.length).toBeGreaterThan(3);
    for (const [n, page] of pages.entries()) {
      const text = page.join('\n');
      expect(page.length).toBe(60);
      expect(text).toContain('9 Larkfield Court, downstairs air conditioner');
      expect(text).toContain('Plan larkfield-9, revision 3');
      expect(text).toContain('Standard line-set-reuse, revision 4');
      expect(text).toContain('Content ba7816bf');
      expect(text).not.toContain('ba7816bf8');
      expect(text).toContain(`Page ${n + 1} of ${pages.length}`);
      expect(text).toContain('Print again if the revision on file is higher.');
      expect(text).not.toContain('NOT FOR WORK');
    }
  });

  test('a draft is barred on every page', () => {
    for (const page of pagesOf(barred)) expect(page[0]).toMatch(/^#+ NOT FOR WORK: 2 errors #+$/);
  });

  test.each([40, 45, 52, 60, 66])('pages of %i lines part no step and leave no heading alone', (lines) => {
    const whole = printText(withWorkings, null).split('\n');
    const pages = pagesOf(withWorkings, lines);
    // Each step's lines in the one-page print, up to the empty line behind it.
    const starts = whole.flatMap((line, n) => (/^(\| )? ?\[ \] \d/.test(line) || /^ \[ \] \d/.test(line) ? [n] : []));
    expect(starts.length).toBe(14);
    for (const start of starts) {
      let end = start;
      while (whole[end + 1] !== '' && !whole[end + 1]!.startsWith('+') && end - start < 30) end += 1;
      const first = whole[start]!;
      const page = pages.find((one) => one.includes(first))!;
      const at = page.indexOf(first);
      expect(page.slice(at, at + end - start + 1)).toEqual(whole.slice(start, end + 1));
    }
    for (const page of pages) {
      const foot = page.lastIndexOf('-'.repeat(100));
      const last = page
        .slice(0, foot)
        .filter((line) => line !== '')
        .at(-1)!;
      expect(last, 'a heading stands at the foot').not.toMatch(/^(=+|-+)$/);
    }
  });

  test('no line is wider than 100 columns, whatever stands in it', () => {
    const wild: Procedure = {
      ...quillbrook,
      steps: [step('1', 'wild', `${hostile} ${'x'.repeat(300)}`, { each: ['y'.repeat(150)], aim: [] })],
    };
    for (const procedure of [withWorkings, wild]) {
      for (const line of printText(procedure).split(/[\n\f]/)) expect([...line].length).toBeLessThanOrEqual(100);
    }
    expect(printText(wild)).not.toContain('\u0007');
  });
});
