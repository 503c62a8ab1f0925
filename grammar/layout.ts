/**
 * The canonical layout: two blanks to a block, one between terms, one statement a line. Only blanks and line ends are
 * ever changed; no token and no comment is touched or moved. What has a fault stays as it is, since nobody knows yet
 * what it is meant to be.
 */
import { isSettled } from './faults';
import { blockStart } from './locate';
import { print } from './print';
import type { Item, Statement, Token, Tree } from './tree';

/** Replace the characters `from`..`to` (absolute, UTF-16 units) of the text by `text`. */
export interface TextEdit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const step = '  ';

/** What stands between two pieces of text that are kept. */
type Gap = 'none' | 'space' | 'as it is' | 'before a comment' | 'line' | 'line, own indent';

/** Edits in the order of the text, none touching another; none for a text that is laid out already. */
export function format(tree: Tree): TextEdit[] {
  if (tree.items[0]?.faults[0]?.name === 'too-large') return [];
  const layout = new Layout(print(tree), tree.mark.length);
  layout.row(tree.items, tree.mark.length, 0, false);
  layout.finish();
  return layout.edits;
}

class Layout {
  readonly edits: TextEdit[] = [];
  private readonly newline: string;
  /** End of the last kept piece. */
  private done: number;
  private depth = 0;
  /** How many of the blocks around stand on one line; within them no line is broken. */
  private oneLineBlocks = 0;
  /** Whether the kept text ends with a newline or is empty, so that the next line need not be broken off. */
  private atLineStart = true;
  /** Whether an empty line is to stand before the next line. */
  private emptyLine = false;

  constructor(
    private readonly text: string,
    start: number,
  ) {
    this.done = start;
    this.newline = /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
  }

  /** `inBlock`: the first item stands behind the opening brace. */
  row(items: readonly Item[], start: number, depth: number, inBlock: boolean): void {
    let at = start;
    let newLine = !inBlock;
    let begun = false;
    const leftAlone = leftAloneIn(items, depth);
    for (const [index, item] of items.entries()) {
      const comment = item.kind === 'blank' ? item.head.find(({ kind }) => kind === 'comment') : undefined;
      this.depth = depth;
      if (item.kind === 'blank' && comment === undefined) {
        this.emptyLine = newLine && begun;
      } else {
        if (item.kind === 'blank') this.keepToken(comment!, at, newLine ? 'line' : 'before a comment');
        else if (item.kind === 'stray' || leftAlone[index]!) this.keepItem(item, at, newLine);
        else this.statement(item, at, depth);
        // A comment behind the opening brace is no line of the block yet.
        begun = begun || newLine || item.kind !== 'blank';
      }
      newLine = endsWithNewline(item);
      at += item.length;
    }
  }

  /** Ends the text with one newline, where its last line was laid out. */
  finish(): void {
    this.replace(this.text.length, this.atLineStart ? '' : this.newlines(1, this.text.length));
  }

  private statement(statement: Statement, at: number, depth: number): void {
    const { block } = statement;
    let first = true;
    for (const token of statement.head) {
      if (token.kind === 'space' || token.kind === 'newline') continue;
      this.keepToken(token, at, first ? (this.oneLineBlocks > 0 ? 'space' : 'line') : gapBefore(token));
      first = false;
    }
    if (block === null) return;
    const start = at + blockStart(statement);
    const flat = this.isOneLine(start, block.length);
    if (flat) this.oneLineBlocks++;
    this.row(block.items, start, depth + 1, true);
    if (flat) this.oneLineBlocks--;
    this.depth = depth;
    this.emptyLine = false;
    const brace = block.close[block.close.length - 1]!;
    this.keepToken(brace, start, flat ? (block.items.length === 0 ? 'none' : 'space') : 'line');
    for (const token of statement.tail) if (token.kind === 'comment') this.keepToken(token, at, 'before a comment');
  }

  private isOneLine(start: number, length: number): boolean {
    return this.oneLineBlocks > 0 || !/[\r\n]/.test(this.text.slice(start, start + length));
  }

  private keepToken(token: Token, start: number, gap: Gap): void {
    this.keep(start + token.at, start + token.at + token.text.length, gap);
  }

  private keepItem(item: Item, at: number, newLine: boolean): void {
    this.keep(at, at + item.length, newLine ? 'line, own indent' : 'as it is');
  }

  private keep(from: number, to: number, gap: Gap): void {
    const found = this.text.slice(this.done, from);
    if (gap === 'none') this.replace(from, '');
    else if (gap === 'space') this.replace(from, ' ');
    else if (gap === 'before a comment') this.replace(from, found === '' ? ' ' : found);
    else if (gap !== 'as it is') {
      const lines = this.newlines((this.atLineStart ? 0 : 1) + (this.emptyLine ? 1 : 0), from);
      this.replace(from, lines + (gap === 'line' ? step.repeat(this.depth) : ''));
    }
    this.emptyLine = false;
    this.done = to;
    this.atLineStart = /[\r\n]/.test(this.text.charAt(to - 1));
  }

  /** As many line ends, those first that are there before `to`. */
  private newlines(count: number, to: number): string {
    const found = this.text.slice(this.done, to).match(/\r\n|\n|\r/g) ?? [];
    let lines = '';
    for (let line = 0; line < count; line++) lines += found[line] ?? this.newline;
    return lines;
  }

  private replace(to: number, text: string): void {
    if (this.text.slice(this.done, to) !== text) this.edits.push({ from: this.done, to, text });
  }
}

function gapBefore(token: Token): Gap {
  if (token.kind === 'comma' || token.kind === 'colon') return 'none';
  return token.kind === 'comment' ? 'before a comment' : 'space';
}

function endsWithNewline(item: Item): boolean {
  const tokens = item.kind === 'statement' && item.block !== null ? item.tail : item.head;
  return tokens[tokens.length - 1]?.kind === 'newline';
}

/**
 * Which items of a row stay as they are: those with a fault. A brace without its partner puts the whole declaration in
 * doubt, and what stands before it on its line: their indentation is all that says where the block ends.
 */
function leftAloneIn(items: readonly Item[], depth: number): boolean[] {
  const leftAlone: boolean[] = [];
  for (let index = items.length - 1; index >= 0; index--) {
    const item = items[index]!;
    const sharesLine = !endsWithNewline(item) && (leftAlone[index + 1] ?? false);
    leftAlone[index] = item.faults.length > 0 || (depth === 0 && (sharesLine || !isSettled(item)));
  }
  return leftAlone;
}
