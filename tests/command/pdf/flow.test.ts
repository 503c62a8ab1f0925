import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paginate, type Slab, slab, stacked } from '../../../server/command/pdf/flow';

const plain = (height: number, more: Partial<Slab> = {}) => slab(height, () => undefined, more);
/** Heights of what stands on each page. */
const heights = (slabs: readonly Slab[], room: number) =>
  paginate(slabs, room).map((page) => page.map((one) => one.slab.height));

describe('paging', () => {
  test.each<[string, readonly Slab[], number, number[][]]>([
    ['fills a page, then turns', [plain(40), plain(50), plain(20)], 100, [[40, 50], [20]]],
    ['takes a heading along', [plain(80), plain(15, { keep: true }), plain(30)], 100, [[80], [15, 30]]],
    [
      'takes two headings and a table’s head along',
      [plain(50), plain(15, { keep: true }), plain(10, { keep: true }), plain(8, { keep: true }), plain(30)],
      100,
      [[50], [15, 10, 8, 30]],
    ],
    ['begins a page where one is asked for', [plain(10), plain(5, { newPage: true })], 100, [[10], [5]]],
    ['leaves out space at the head of a page', [plain(95), plain(99, { space: 9 })], 100, [[95], [99]]],
    ['counts space within a page', [plain(50), plain(45, { space: 9 })], 100, [[50], [45]]],
    ['draws a table’s head again', [plain(90, {}), plain(30, { header: plain(7) })], 100, [[90], [7, 30]]],
    ['parts only what no page can hold', [stacked([plain(60), plain(60), plain(30)])], 100, [[60], [60, 30]]],
    ['places what cannot be parted, once', [plain(10), plain(300), plain(10)], 100, [[10], [300], [10]]],
    ['knows an empty sheet', [], 100, [[]]],
  ])('%s', (_name, slabs, room, expected) => {
    expect(heights(slabs, room)).toEqual(expected);
  });

  test('no slab is parted, lost, doubled or hangs over; no heading stands at the foot', () => {
    const any = fc.record({
      height: fc.integer({ min: 1, max: 60 }),
      space: fc.integer({ min: 0, max: 9 }),
      keep: fc.boolean(),
    });
    fc.assert(
      fc.property(fc.array(any, { maxLength: 60 }), (given) => {
        // At most three tied in a row, as headings are, so that a page can hold what is tied.
        const slabs = given.map((one, n) =>
          plain(one.height, { space: one.space, keep: one.keep && n % 3 !== 2 && n < given.length - 1 }),
        );
        const pages = paginate(slabs, 200);
        expect(pages.flatMap((page) => page.map((one) => one.slab))).toEqual(slabs);
        for (const [n, page] of pages.entries()) {
          for (const { slab: one, y } of page) expect(y + one.height).toBeLessThanOrEqual(200);
          for (let m = 1; m < page.length; m++) {
            expect(page[m]!.y).toBe(page[m - 1]!.y + page[m - 1]!.slab.height + page[m]!.slab.space);
          }
          if (n < pages.length - 1) expect(page.at(-1)?.slab.keep).toBe(false);
        }
      }),
      { numRuns: 500 },
    );
  });
});
