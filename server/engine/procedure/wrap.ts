import type { Span, SpanStyle } from './sentence';

/** How wide a text is in the printer's own unit (points, columns). */
export type Measure = (text: string, style: SpanStyle) => number;

export interface Piece {
  readonly text: string;
  readonly style: SpanStyle;
}

/** One printed line: pieces of one style each, blanks at its end left off. */
export interface Line {
  readonly pieces: readonly Piece[];
  readonly width: number;
}

/** Cuts a word that is wider than a whole line into the longest parts that fit: at a blank or behind ".." where it has one. */
function cut(word: Piece, width: number, measure: Measure): Piece[] {
  const parts: Piece[] = [];
  let part = '';
  for (const sign of word.text) {
    if (part !== '' && measure(part + sign, word.style) > width) {
      const at = Math.max(part.lastIndexOf(' ') + 1, part.lastIndexOf('..') + 2);
      const here = at > 1 ? at : part.length;
      parts.push({ text: part.slice(0, here), style: word.style });
      part = part.slice(here);
    }
    part += sign;
  }
  if (part !== '') parts.push({ text: part, style: word.style });
  return parts;
}

/** Words and blanks in order. Pieces that touch without a blank form one word, even over a change of style. */
function wordsOf(spans: readonly Span[]): Piece[][] {
  const words: Piece[][] = [];
  let touching = false;
  for (const span of spans) {
    const tokens = span.solid ? [span.text] : (span.text.match(/\s+|[^\s]+/gu) ?? []);
    for (const token of tokens) {
      if (/^\s+$/u.test(token)) {
        touching = false;
        words.push([{ text: ' ', style: span.style }]);
        continue;
      }
      const piece: Piece = { text: token, style: span.style };
      const last = words.at(-1);
      if (touching && last !== undefined) last.push(piece);
      else words.push([piece]);
      touching = true;
    }
  }
  return words;
}

function joined(pieces: readonly Piece[], measure: Measure): Line {
  const kept = [...pieces];
  while (kept.length > 0 && kept.at(-1)!.text === ' ') kept.pop();
  const end = kept.pop();
  if (end) kept.push({ ...end, text: end.text.trimEnd() });
  const merged: Piece[] = [];
  for (const piece of kept) {
    const last = merged.at(-1);
    if (last !== undefined && last.style === piece.style) {
      merged[merged.length - 1] = { text: last.text + piece.text, style: last.style };
    } else merged.push(piece);
  }
  return { pieces: merged, width: merged.reduce((sum, piece) => sum + measure(piece.text, piece.style), 0) };
}

/** Breaks text into lines of at most `width`. At least one line comes back, if an empty one. */
export function wrap(spans: readonly Span[], width: number, measure: Measure): readonly Line[] {
  const lines: Line[] = [];
  let current: Piece[] = [];
  let used = 0;
  const finish = () => {
    lines.push(joined(current, measure));
    current = [];
    used = 0;
  };
  for (const word of wordsOf(spans)) {
    const blank = word.length === 1 && word[0]!.text === ' ';
    if (blank && current.length === 0) continue;
    const wide = word.reduce((sum, piece) => sum + measure(piece.text, piece.style), 0);
    if (!blank && used + wide > width && current.length > 0) finish();
    if (wide <= width || blank) {
      current.push(...word);
      used += wide;
      continue;
    }
    for (const part of word.flatMap((piece) => cut(piece, width, measure))) {
      const partWidth = measure(part.text, part.style);
      if (used + partWidth > width && current.length > 0) finish();
      current.push(part);
      used += partWidth;
    }
  }
  if (current.length > 0 || lines.length === 0) finish();
  return lines;
}
