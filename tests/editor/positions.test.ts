import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Document } from '../../server/editor/document';
import { LineIndex } from '../../server/editor/positions';

test.each([
  ['one\ntwo\n', 4, { line: 1, character: 0 }],
  ['one\r\ntwo', 5, { line: 1, character: 0 }],
  ['one\rtwo', 5, { line: 1, character: 1 }],
  ['', 0, { line: 0, character: 0 }],
  ['pipe 🔧 x\ny', 8, { line: 0, character: 8 }],
  ['one\n', 4, { line: 1, character: 0 }],
])('%j at %i', (text, offset, position) => {
  expect(LineIndex.of(text).positionAt(offset)).toEqual(position);
  expect(LineIndex.of(text).offsetAt(text, position)).toBe(offset);
});

test.each([
  ['one\r\ntwo', { line: 0, character: 99 }, 3],
  ['one\ntwo', { line: 9, character: 0 }, 7],
  ['one\ntwo', { line: -1, character: 0 }, 0],
  ['one\ntwo', { line: 1, character: 99 }, 7],
])('past the end: %j %j', (text, position, offset) => {
  expect(LineIndex.of(text).offsetAt(text, position)).toBe(offset);
});

test('following edits gives the index of the text after them', () => {
  const piece = fc.string({ unit: fc.constantFrom('a', '\n', '\r', '\r\n', ' '), maxLength: 8 });
  const edit = fc.tuple(fc.nat(), fc.nat(), piece);
  fc.assert(
    fc.property(piece, fc.array(edit, { maxLength: 12 }), (first, edits) => {
      let text = first;
      const index = LineIndex.of(text);
      for (const [a, b, inserted] of edits) {
        const ends = [a % (text.length + 1), b % (text.length + 1)] as const;
        const [from, to] = [Math.min(...ends), Math.max(...ends)];
        text = text.slice(0, from) + inserted + text.slice(to);
        index.change(from, to, inserted.length, text);
        const fresh = LineIndex.of(text);
        expect(index.lineCount).toBe(fresh.lineCount);
        for (let at = 0; at <= text.length; at++) expect(index.positionAt(at)).toEqual(fresh.positionAt(at));
      }
    }),
    { numRuns: 500 },
  );
});

test('a document is its text after every change, whether somebody reads it between them or not', () => {
  const piece = fc.string({ unit: fc.constantFrom('a', 'b', ' ', '\n', '\r\n'), maxLength: 4 });
  const place = fc.record({ line: fc.nat(4), character: fc.nat(6) });
  fc.assert(
    fc.property(piece, fc.array(fc.tuple(place, place, piece, fc.boolean()), { maxLength: 12 }), (first, edits) => {
      const document = new Document('memory:/a', first, 1);
      let text = first;
      for (const [start, end, inserted, reads] of edits) {
        const fresh = LineIndex.of(text);
        const ends = [fresh.offsetAt(text, start), fresh.offsetAt(text, end)] as const;
        text = text.slice(0, Math.min(...ends)) + inserted + text.slice(Math.max(...ends));
        document.change({ range: { start, end }, text: inserted });
        if (reads) expect(document.text).toBe(text);
      }
      expect(document.text).toBe(text);
      const fresh = LineIndex.of(text);
      for (let at = 0; at <= text.length; at++) expect(document.lines.positionAt(at)).toEqual(fresh.positionAt(at));
    }),
    { numRuns: 1000 },
  );
});
