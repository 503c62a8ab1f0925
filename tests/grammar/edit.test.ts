import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { print } from '../../grammar/index';
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

describe('an edited tree', () => {
  test('equals the tree of the whole text, over 12,000 edits in a row of twelve', () => {
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
          expect(tree).toEqual(grammar.parse(text));
        }
      }),
      { numRuns: 1000, seed: 20270518 },
    );
  }, 240_000);
});
