/** The tree's text, byte for byte. */
import type { Item, Token, Tree } from './tree';

function addTokens(tokens: readonly Token[], into: string[]): void {
  for (const token of tokens) into.push(token.text);
}

function addItem(item: Item, into: string[]): void {
  addTokens(item.head, into);
  if (item.kind !== 'statement') return;
  if (item.block !== null) {
    for (const inner of item.block.items) addItem(inner, into);
    addTokens(item.block.close, into);
  }
  addTokens(item.tail, into);
}

/** The text of one statement, blank or stray brace, with its line's end. Nesting is bounded by the parser. */
export function textOf(item: Item): string {
  const parts: string[] = [];
  addItem(item, parts);
  return parts.join('');
}

export function print(tree: Tree): string {
  const parts: string[] = [tree.mark];
  for (const item of tree.items) addItem(item, parts);
  return parts.join('');
}
