/**
 * A tree after a change of its text, made of the tree before it: only the statements that the change touches are read
 * again, and only those that stand around them are made anew. The result equals a reading from scratch; wherever that
 * is not certain from the touched lines alone, the next statement outwards is read again, in the end the whole text.
 */
import { isSettled } from './faults';
import { blockStart } from './locate';
import { lengthOf } from './making';
import { type Language, largest, parseText } from './parse';
import { print, textOf } from './print';
import { columnOf, findStructure, type Surroundings, wholeFile } from './structure';
import type { Block, Item, Statement, Token, Tree } from './tree';

interface Change {
  readonly from: number;
  readonly to: number;
  readonly inserted: string;
}

/** A row of items, and what must be known of where it stands. */
interface Row {
  readonly items: readonly Item[];
  readonly around: Surroundings;
  /** The block whose items these are; null at the file's level. */
  readonly block: Block | null;
}

/** `from` and `to` outside the text are moved to its ends. */
export function editTree(tree: Tree, from: number, to: number, inserted: string, language: Language): Tree {
  const start = Math.max(0, Math.min(from, to, tree.length));
  const end = Math.min(tree.length, Math.max(from, to, 0));
  const length = tree.length + inserted.length - (end - start);
  const whole = () => {
    const text = print(tree);
    return parseText(text.slice(0, start) + inserted + text.slice(end), language);
  };
  // A byte-order mark may come or go at the very beginning.
  if (start === 0 || start < tree.mark.length || tree.length > largest || length > largest) return whole();
  const at = tree.mark.length;
  const row: Row = { items: tree.items, around: wholeFile, block: null };
  const items = editRow(row, { from: start - at, to: end - at, inserted }, language);
  return items === undefined ? whole() : { ...tree, items, length };
}

/** The row after the change, whose places count from the row's start; undefined if the row alone cannot tell. */
function editRow(row: Row, change: Change, language: Language): readonly Item[] | undefined {
  const { items } = row;
  let first = 0;
  let at = 0;
  // The touched items are those that the change reaches or borders on.
  while (first < items.length && at + items[first]!.length < change.from) at += items[first++]!.length;
  let behind = first;
  let end = at;
  while (behind < items.length && end <= change.to) end += items[behind++]!.length;

  if (behind - first === 1) {
    const inner = editWithin(row, first, at, change, language);
    if (inner !== undefined) return spliced(items, first, behind, [inner]);
  }
  const read = readAgain(row, first, behind, at, change, language);
  return read === undefined ? undefined : spliced(items, first, behind, read);
}

function spliced(items: readonly Item[], first: number, behind: number, put: readonly Item[]): readonly Item[] {
  const row = items.slice();
  row.splice(first, behind - first, ...put);
  return row;
}

/** The one touched statement with its block changed, if the change stays among the items of that block. */
function editWithin(row: Row, index: number, at: number, change: Change, language: Language): Item | undefined {
  const statement = row.items[index]!;
  if (statement.kind !== 'statement' || statement.block === null) return undefined;
  const { block } = statement;
  const start = at + blockStart(statement);
  if (change.from < start || change.to > start + block.length - lengthOf(block.close)) return undefined;
  const indent = indentOf(row, index);
  if (indent === undefined) return undefined;
  const around: Surroundings = { depth: row.around.depth + 1, indent, midLine: true };
  const moved: Change = { ...change, from: change.from - start, to: change.to - start };
  const items = editRow({ items: block.items, around, block }, moved, language);
  return items === undefined ? undefined : withItems(statement, block, items, change);
}

/** Column at which the line of a statement begins; undefined where another statement stands before it on that line. */
function indentOf(row: Row, index: number): number | undefined {
  if (index === 0 && row.around.midLine) return row.around.indent;
  if (index > 0 && !endsLine(row.items[index - 1]!)) return undefined;
  return columnOf(row.items[index]!.head);
}

function shifted(tokens: readonly Token[], by: number): readonly Token[] {
  return by === 0 || tokens.length === 0 ? tokens : tokens.map((token) => ({ ...token, at: token.at + by }));
}

function withItems(statement: Statement, block: Block, items: readonly Item[], change: Change): Statement {
  const by = change.inserted.length - (change.to - change.from);
  return {
    ...statement,
    block: { ...block, items, close: shifted(block.close, by), length: block.length + by },
    tail: shifted(statement.tail, by),
    length: statement.length + by,
  };
}

/**
 * The touched items read again, if nothing before or after them could have changed the reading: they are whole lines,
 * every brace in them finds its partner in them, and none of their lines is as far out as the block around them.
 */
function readAgain(
  row: Row,
  first: number,
  behind: number,
  at: number,
  change: Change,
  language: Language,
): readonly Item[] | undefined {
  const { items, around, block } = row;
  const atStart = first === 0;
  const atEnd = behind === items.length;
  const before = items[first - 1];
  if (before !== undefined && (!endsLine(before) || isOpen(before))) return undefined;
  const touched = items.slice(first, behind);
  if (!touched.every(isSettled)) return undefined;
  const lastTouched = touched[touched.length - 1];
  const needsLine = !atEnd || block !== null;
  if (needsLine && lastTouched !== undefined && !endsLine(lastTouched)) return undefined;

  const old = touched.map(textOf).join('');
  const text = old.slice(0, change.from - at) + change.inserted + old.slice(change.to - at);
  const midLine = atStart && around.midLine;
  if (needsLine && !(text === '' ? !midLine : /[\r\n]$/.test(text))) return undefined;
  const structure = findStructure(language.tokenize(text), { ...around, midLine });
  if (!structure.settled || structure.leastColumn <= around.indent) return undefined;
  const read = language.readItems(structure);
  if (block !== null && !keepsFirst(items, first, behind, read, around.indent)) return undefined;
  return read;
}

/**
 * Whether the block's first statement that leads its line is further in than the block, as it was before, and nothing
 * came onto the line of the opening brace: what the parser holds of the author's indentation hangs on these.
 */
function keepsFirst(
  items: readonly Item[],
  first: number,
  behind: number,
  read: readonly Item[],
  indent: number,
): boolean {
  if (first === 0 && !(items[0]?.kind === 'blank' && read[0]?.kind === 'blank')) return false;
  const was = firstLeading(items);
  if (was < 0) return false;
  if (was < first) return true;
  const is = firstLeading(first === 0 ? read : [items[0]!, ...read]);
  if (was >= behind && is < 0) return true;
  // Those read again are all further in than the block.
  return is >= 0 && columnOf(items[was]!.head) > indent;
}

/** Index of the first item, but for the one behind the opening brace, that is a statement and leads its line; or -1. */
function firstLeading(items: readonly Item[]): number {
  for (let index = 1; index < items.length; index++) {
    if (items[index]!.kind === 'statement' && endsLine(items[index - 1]!)) return index;
  }
  return -1;
}

/** Whether the item ends with its line; a block that is still open does not. */
function endsLine(item: Item): boolean {
  let last = item;
  while (last.kind === 'statement' && last.block !== null && last.block.close.length === 0) {
    const inner = last.block.items[last.block.items.length - 1];
    if (inner === undefined) return false;
    last = inner;
  }
  const tokens = last.kind === 'statement' && last.block !== null ? last.tail : last.head;
  return tokens[tokens.length - 1]?.kind === 'newline';
}

/** Whether the item ends with a block that has no closing brace: what follows has ended it. */
function isOpen(item: Item): boolean {
  return item.kind === 'statement' && item.block !== null && item.block.close.length === 0;
}
