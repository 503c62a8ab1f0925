/** Where things of the tree stand in the text. Items carry lengths only, so that places are found by walking. */
import type { Item, Statement, Token, Tree } from './tree';

/** Offset of the first item of a statement's block, from the statement's start. */
export function blockStart(statement: Statement): number {
  const last = statement.head[statement.head.length - 1]!;
  return last.at + last.text.length;
}

/**
 * Visits every item from the top down with its absolute offset and the number of blocks around it. What is within an
 * item is left out if `visit` returns false for it.
 */
export function walk(tree: Tree, visit: (item: Item, at: number, depth: number) => boolean | undefined): void {
  walkItems(tree.items, tree.mark.length, 0, visit);
}

function walkItems(
  items: readonly Item[],
  start: number,
  depth: number,
  visit: (item: Item, at: number, depth: number) => boolean | undefined,
): void {
  let at = start;
  for (const item of items) {
    if (visit(item, at, depth) !== false && item.kind === 'statement' && item.block !== null) {
      walkItems(item.block.items, at + blockStart(item), depth + 1, visit);
    }
    at += item.length;
  }
}

/** Absolute offsets of the given items; one that is not in the tree is not in the answer. */
export function locate(tree: Tree, items: ReadonlySet<Item>): Map<Item, number> {
  const found = new Map<Item, number>();
  locateItems(tree.items, tree.mark.length, items, found);
  return found;
}

/** True when all are found. */
function locateItems(
  within: readonly Item[],
  start: number,
  wanted: ReadonlySet<Item>,
  found: Map<Item, number>,
): boolean {
  let at = start;
  for (let index = 0; index < within.length; index++) {
    if (found.size === wanted.size) return true;
    const item = within[index]!;
    if (wanted.has(item)) found.set(item, at);
    if (item.kind === 'statement' && item.block !== null) {
      if (locateItems(item.block.items, at + blockStart(item), wanted, found)) return true;
    }
    at += item.length;
  }
  return found.size === wanted.size;
}

export interface PlacedItem {
  readonly item: Item;
  /** Absolute offset. */
  readonly at: number;
}

export interface Place {
  /** The items around the offset, the outermost first. Empty behind the last line of the text. */
  readonly path: readonly PlacedItem[];
  /** The token whose first character is at the offset or that reaches beyond it; its own `at` counts from its item. */
  readonly token?: Token;
}

/**
 * What stands at an absolute offset: the character behind it decides. At the end of the text that is the last line if
 * it has no newline, and a block that is still open.
 */
export function itemAt(tree: Tree, offset: number): Place {
  const path: PlacedItem[] = [];
  let items: readonly Item[] = tree.items;
  let at = tree.mark.length;
  for (;;) {
    const next = itemAround(items, at, offset, offset >= tree.length);
    if (next === undefined) {
      const around = path[path.length - 1];
      const token = around === undefined ? undefined : tokenOf(around, offset);
      return token === undefined ? { path } : { path, token };
    }
    path.push(next);
    if (next.item.kind !== 'statement' || next.item.block === null) {
      items = [];
      continue;
    }
    items = next.item.block.items;
    at = next.at + blockStart(next.item);
  }
}

function itemAround(items: readonly Item[], start: number, offset: number, atEnd: boolean): PlacedItem | undefined {
  let at = start;
  for (let index = 0; index < items.length; index++) {
    const item = items[index]!;
    const end = at + item.length;
    if (offset < at) return undefined;
    if (offset < end || (atEnd && index === items.length - 1 && isOpenEnded(item))) return { item, at };
    at = end;
  }
  return undefined;
}

/** Whether what is typed behind the item still belongs to it. */
function isOpenEnded(item: Item): boolean {
  if (item.kind === 'statement' && item.block !== null) {
    if (item.block.close.length === 0) return true;
    return item.tail[item.tail.length - 1]?.kind !== 'newline';
  }
  return item.head[item.head.length - 1]?.kind !== 'newline';
}

function tokenOf({ item, at }: PlacedItem, offset: number): Token | undefined {
  const within = offset - at;
  const holds = (token: Token) => token.at <= within && within < token.at + token.text.length;
  const own = item.head.find(holds);
  if (own !== undefined || item.kind !== 'statement') return own;
  const behind = item.tail.find(holds);
  if (behind !== undefined || item.block === null) return behind;
  const inBlock = within - blockStart(item);
  return item.block.close.find((token) => token.at <= inBlock && inBlock < token.at + token.text.length);
}
