/** From a text to its tree. */
import { fault } from './faults';
import type { Reader } from './parser';
import { findStructure } from './structure';
import type { Tokenizer } from './tokens';
import type { Stray, Tree } from './tree';

/** A plan of a large job has some ten thousand characters; beyond this many a text is no plan. */
export const largest = 2_000_000;

const byteOrderMark = '\uFEFF';

/** The two halves of reading, with the units of one grammar. */
export interface Language {
  readonly tokenize: Tokenizer;
  readonly readItems: Reader;
}

/** The whole text as one thing that nobody reads on. */
function unread(text: string): Tree {
  const tooLarge = fault('too-large', 0, text.length);
  const whole: Stray = {
    kind: 'stray',
    head: [{ kind: 'error', text, at: 0 }],
    length: text.length,
    faults: [tooLarge],
  };
  return { mark: '', items: [whole], length: text.length, faults: [] };
}

/** Never throws. */
export function parseText(text: string, { tokenize, readItems }: Language): Tree {
  if (text.length > largest) return unread(text);
  const mark = text.startsWith(byteOrderMark) ? byteOrderMark : '';
  const items = readItems(findStructure(tokenize(text.slice(mark.length))));
  return { mark, items, length: text.length, faults: [] };
}
