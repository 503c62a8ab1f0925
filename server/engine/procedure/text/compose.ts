import { type Sentence, type Span, sentence, spans } from '../sentence';
import { type Measure, wrap } from '../wrap';

/** Columns of the printed text, for a page of 60 lines on either paper in a common fixed pitch. */
export const columns = 100;

/** One column a sign: good for the letters, figures and signs of a sheet. */
export const inColumns: Measure = (text) => [...text].length;

/** Blanks at the end of a line and control signs never reach the print. */
export const clean = (text: string): string => text.replace(/[\u0000-\u001f\u007f]/g, ' ').trimEnd();

const toSpans = (value: string | Sentence): readonly Span[] =>
  spans(typeof value === 'string' ? sentence(value) : value);

/** Text broken to `width`, each line a string. */
export function broken(value: string | Sentence, width: number): readonly string[] {
  return wrap(toSpans(value), Math.max(1, width), inColumns).map((line) =>
    clean(line.pieces.map((piece) => piece.text).join('')),
  );
}

/** Text behind a lead: the first line stands beside it, the further ones under the first. */
export function hung(lead: string, value: string | Sentence, width: number): readonly string[] {
  const indent = ' '.repeat(inColumns(lead, 'plain'));
  return broken(value, width - indent.length).map((line, n) => clean((n === 0 ? lead : indent) + line));
}

export function padded(text: string, width: number, align: 'left' | 'right' = 'left'): string {
  const blanks = ' '.repeat(Math.max(0, width - inColumns(text, 'plain')));
  return align === 'left' ? text + blanks : blanks + text;
}

/** Left and right on one line where both fit, else one under the other. */
export function apart(left: string, right: string, width: number): readonly string[] {
  if (right === '') return [clean(left)];
  const room = width - inColumns(left, 'plain') - inColumns(right, 'plain');
  if (room >= 2) return [left + ' '.repeat(room) + right];
  return [clean(left), padded(right, width, 'right')];
}
