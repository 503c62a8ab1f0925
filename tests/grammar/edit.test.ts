import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Item, print, type Tree } from '../../grammar/index';
import { grammar, samples } from './samples';

/** Pieces that people type, and pieces that break lines, blocks and quotes. */
const snippet = fc.oneof(
  fc.constantFrom(
    ...['', ' ', '  ', '    ', '\t', '\n', '\r', '\r\n', '\n\n', '{', '}', '{}', '"', '#', ':', ',', '->', '-', '..'],
    ...['a', 'x y', '7 lb 4 oz', '30..90 s', '1/2', '°', '\u0394', '\u{1F600}', '\ud83d', '\u0000', '\ufeff', '\u00a0'],
    ...[' {\n', '\n}\n', '\n  }\n', '\n    }\n', '}\n}', 'phase "x" {\n', 'a: b {\n  c\n}\n', '    label system\n'],
    ...['  steps {\n    x\n', '} }', '{ a }', '# note\n', 'use "x"\n'],
  ),
  fc.string({ unit: 'binary', maxLength: 4 }),
);

const operation = fc.record({
  place: fc.double({ min: 0, max: 1, noNaN: true }),
  taken: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(60)),
  inserted: snippet,
  /** Aims at the beginning or the end of a line, where most edits and most accidents happen. */
  atLine: fc.constantFrom('any', 'start', 'end'),
});

function lineEdge(text: string, offset: number, edge: string): number {
  if (edge === 'start') return text.lastIndexOf('\n', offset - 1) + 1;
  if (edge === 'end') {
    const end = text.indexOf('\n', offset);
    return end < 0 ? text.length : end;
  }
  return offset;
}

const starts = [
  ...samples.map(([, text]) => text),
  ...samples.slice(0, 3).map(([, text]) => `\ufeff${text.replaceAll('\n', '\r\n')}`),
  samples[0]![1].replace(/^ +/gm, ''),
];

/** Trees are plain data: their JSON is compared first, since it is quick, and their parts only to show a difference. */
function expectSame(edited: Tree, fresh: Tree): void {
  const same = JSON.stringify(edited) === JSON.stringify(fresh);
  if (!same) expect(edited).toEqual(fresh);
  expect(same).toBe(true);
}

describe('an edited tree', () => {
  test('equals the tree of the whole text, over 10,200 edits in rows of twelve', () => {
    fc.assert(
      fc.property(fc.constantFrom(...starts), fc.array(operation, { minLength: 12, maxLength: 12 }), (start, edits) => {
        let text = start;
        let tree = grammar.parse(text);
        for (const { place, taken, inserted, atLine } of edits) {
          const from = lineEdge(text, Math.floor(place * text.length), atLine);
          const to = Math.min(text.length, from + taken);
          tree = grammar.edit(tree, from, to, inserted);
          text = text.slice(0, from) + inserted + text.slice(to);
          expect(print(tree) === text).toBe(true);
          expectSame(tree, grammar.parse(text));
        }
      }),
      { numRuns: 850 },
    );
  }, 240_000);

  const lines = fc.array(
    fc.tuple(
      fc.constantFrom('', '  ', '    ', '      ', '\t'),
      fc.constantFrom(
        ...['a {', 'b {', 'c', 'd', '}', '}', '}', '', '# n', 'f { g }', 'h { i', '} j', 'k }', 'l { # x', '{'],
      ),
      fc.constantFrom('\n', '\n', '\r\n'),
    ),
    { minLength: 2, maxLength: 14 },
  );

  test('equals the tree of the whole text, whatever the indentation and the braces', () => {
    fc.assert(
      fc.property(lines, fc.array(operation, { minLength: 4, maxLength: 4 }), (start, edits) => {
        let text = start.flat().join('');
        let tree = grammar.parse(text);
        for (const { place, taken, inserted } of edits) {
          const from = Math.floor(place * text.length);
          const to = Math.min(text.length, from + Math.min(taken, 9));
          tree = grammar.edit(tree, from, to, inserted);
          text = text.slice(0, from) + inserted + text.slice(to);
          expect(print(tree) === text).toBe(true);
          expectSame(tree, grammar.parse(text));
        }
      }),
      { numRuns: 2500 },
    );
  }, 240_000);

  /** All statements, blanks and strays by their text. */
  const everyItem = (tree: Tree): Item[] => {
    const within = (items: readonly Item[]): Item[] =>
      items.flatMap((item) => [item, ...(item.kind === 'statement' && item.block ? within(item.block.items) : [])]);
    return within(tree.items);
  };

  test.each<[what: string, find: string, take: number, put: string, remade: number]>([
    // The changed line, its two neighbours where the change borders on them, and the statements around.
    ['a letter within a line', 'urge each kept line at 50', 0, 'x', 4 + 1],
    ['a new line behind a line', '\n        flush each', 0, '\n        trim line', 4 + 3],
    ['a line that goes', '        flush each kept line into container\n', 44, '', 4 + 2],
    ['a brace that opens and closes', ' each kept line at both ends\n', 0, ' { note "x" } #', 3 + 2],
  ])('keeps every untouched statement itself: %s', (_, find, take, put, most) => {
    const text = samples.find(([name]) => name === 'standard-line-set-reuse.jobplan')![1];
    const before = grammar.parse(text);
    const from = text.indexOf(find);
    expect(from).toBeGreaterThan(0);
    const after = grammar.edit(before, from, from + take, put);
    const known = new Set(everyItem(before));
    expect(everyItem(after).filter((item) => !known.has(item)).length).toBeLessThanOrEqual(most);
    expectSame(after, grammar.parse(text.slice(0, from) + put + text.slice(from + take)));
  });

  test('takes places outside the text for its ends', () => {
    expect(print(grammar.edit(grammar.parse('a\n'), 99, 120, 'b'))).toBe('a\nb');
    expect(print(grammar.edit(grammar.parse('a\n'), -5, 1, 'b'))).toBe('b\n');
  });
});
