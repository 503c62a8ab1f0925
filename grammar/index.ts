/** Text to tree and back. Knows nothing of what the words mean. */
import { editTree } from './edit';
import { parseText } from './parse';
import { createReader } from './parser';
import { createTokenizer } from './tokens';
import type { Tree } from './tree';

export { format, type TextEdit } from './layout';
export { blockStart, itemAt, locate, type Place, type PlacedItem, walk } from './locate';
export { print, textOf } from './print';
export type { Blank, Block, Item, Statement, Stray, SyntaxFault, Token, TokenKind, Tree } from './tree';

export interface Grammar {
  /** Reads any text; never throws. */
  parse(text: string): Tree;
  /** The tree after the characters `from`..`to` (absolute, UTF-16 units) were replaced by `inserted`. */
  edit(tree: Tree, from: number, to: number, inserted: string): Tree;
}

/** A grammar in which these words, after a number, are units; longer ones win over shorter ones. */
export function createGrammar(unitWords: readonly string[]): Grammar {
  const language = { tokenize: createTokenizer(unitWords), readItems: createReader() };
  return {
    parse: (text) => parseText(text, language),
    edit: (tree, from, to, inserted) => editTree(tree, from, to, inserted, language),
  };
}
