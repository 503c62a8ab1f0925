/**
 * Finds which brace closes which, before the parser looks: the parser then sees a balanced row of tokens, whatever the
 * text. Plain matching comes first; where it leaves braces over, the indentation says what the author meant.
 */
import type { IToken, TokenType } from 'chevrotain';
import { Close, Newline, Open, StrayClose, Unreadable } from './tokens';
import type { Token } from './tree';

/** Blocks nest in plans about six deep; the limit only keeps a hostile text from exhausting the stack. */
export const deepest = 200;

/** A tab reaches to the next multiple of this many columns. */
const tabColumns = 4;

/** Where a text stands within the file, when it is not the whole of one. */
export interface Surroundings {
  /** How many blocks are open around the text. */
  readonly depth: number;
  /** Column of the line that opened the block around it; -1 at the file's level. */
  readonly indent: number;
  /** True if the text begins behind the opening brace, on its line. */
  readonly midLine: boolean;
}

export const wholeFile: Surroundings = { depth: 0, indent: -1, midLine: false };

export interface Structure {
  /** All tokens, those of a too deeply nested block made into one. */
  readonly tokens: readonly IToken[];
  /** What the parser reads: all of `tokens` but blanks and comments, with the braces and the line end that are missing. */
  readonly stream: IToken[];
  /** True if plain matching and indentation agree throughout, so that nothing outside can change the reading. */
  readonly settled: boolean;
  /** The least column of a statement that is first on its line; Infinity without one. */
  readonly leastColumn: number;
}

interface OpenBlock {
  /** Column at which the line of the opening statement begins. */
  readonly indent: number;
  /**
   * Plain matching finds its closing brace, or that of a block around it, where the indentation expects it: between
   * the two every brace has its partner, so that plain matching holds however the lines are indented.
   */
  readonly trusted: boolean;
  /** Whether the first statement within is further in than the opening one; undefined until there is one. */
  indented: boolean | undefined;
}

/** Column that a run of blanks reaches. */
export function columnAfter(blanks: string): number {
  let column = 0;
  for (let at = 0; at < blanks.length; at++) {
    column = blanks.charCodeAt(at) === 9 ? column - (column % tabColumns) + tabColumns : column + 1;
  }
  return column;
}

/** Column at which the tokens of a line begin, its first blanks among them. */
export function columnOf(line: readonly Token[]): number {
  const first = line[0];
  return first?.kind === 'space' ? columnAfter(first.text) : 0;
}

const isTrivia = (token: IToken) => token.tokenType.name === 'space' || token.tokenType.name === 'comment';

/** For each opening brace that has a closing one by plain matching: its index, and whether the indentation agrees. */
interface PlainMatch {
  readonly closeOf: Int32Array;
  readonly trusted: Uint8Array;
  readonly columns: Int32Array;
  readonly unmatched: boolean;
  /** Index of the last closing brace that plain matching leaves over, or -1. */
  readonly lastStray: number;
}

const notFirst = -1;

/** `columns` holds, for the first significant token of a line, its column, and `notFirst` for every other token. */
function matchPlainly(tokens: readonly IToken[], around: Surroundings): PlainMatch {
  const closeOf = new Int32Array(tokens.length).fill(-1);
  const trusted = new Uint8Array(tokens.length);
  const columns = new Int32Array(tokens.length).fill(notFirst);
  const open: number[] = [];
  const indents: number[] = [];
  let first = !around.midLine;
  let indent = Math.max(around.indent, 0);
  let lastStray = -1;
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index]!;
    if (token.tokenType === Newline) {
      first = true;
      continue;
    }
    if (isTrivia(token)) continue;
    if (first) {
      const before = tokens[index - 1];
      indent = before !== undefined && before.tokenType.name === 'space' ? columnAfter(before.image) : 0;
      columns[index] = indent;
    }
    const leads = first;
    first = false;
    if (token.tokenType === Open) {
      open.push(index);
      indents.push(indent);
    } else if (token.tokenType.name === 'close') {
      const opening = open.pop();
      const openingIndent = indents.pop();
      if (opening === undefined) lastStray = index;
      else {
        closeOf[opening] = index;
        trusted[opening] = !leads || indent === openingIndent ? 1 : 0;
      }
    }
  }
  return { closeOf, trusted, columns, unmatched: open.length > 0 || lastStray >= 0, lastStray };
}

/** A token that the text does not have: it takes no characters. */
function unwritten(type: TokenType): IToken {
  return { image: '', startOffset: 0, tokenType: type, tokenTypeIdx: type.tokenTypeIdx! };
}

/**
 * Never fails; at worst every closing brace is stray and every opening one is closed at the end of the text. A stray
 * brace among the tokens is marked as one by its type.
 */
export function findStructure(read: readonly IToken[], around: Surroundings = wholeFile): Structure {
  const plain = matchPlainly(read, around);
  const { closeOf, trusted, columns } = plain;
  // The tokens as they are read, unless a block is left unread; only then they are copied.
  let tokens: IToken[] | undefined;
  const stream: IToken[] = [];
  const stack: OpenBlock[] = [];
  let settled = !plain.unmatched;
  let leastColumn = Number.POSITIVE_INFINITY;
  let indent = Math.max(around.indent, 0);

  const take = (token: IToken) => {
    stream.push(token);
    tokens?.push(token);
  };
  const closeUnwritten = () => {
    stack.pop();
    stream.push(unwritten(Close));
    settled = false;
  };

  for (let index = 0; index < read.length; index++) {
    const token = read[index]!;
    const type = token.tokenType;
    const column = columns[index]!;
    if (isTrivia(token)) {
      tokens?.push(token);
      continue;
    }
    if (column !== notFirst) indent = column;

    if (type.name === 'close') {
      const place = column === notFirst ? stack.length - 1 : closedBy(column, stack, index, plain);
      if (place >= 0) {
        while (stack.length - 1 > place) closeUnwritten();
        stack.pop();
        take(token);
      } else {
        settled = false;
        token.tokenType = StrayClose;
        token.tokenTypeIdx = StrayClose.tokenTypeIdx!;
        take(token);
      }
      continue;
    }

    if (column !== notFirst) {
      leastColumn = Math.min(leastColumn, column);
      while (stack.length > 0 && closesByIndent(column, index, stack, read, columns)) closeUnwritten();
      const top = stack[stack.length - 1];
      if (top !== undefined && top.indented === undefined) top.indented = column > top.indent;
    }

    if (type === Open && around.depth + stack.length >= deepest) {
      const last = closeOf[index] === -1 ? read.length - 1 : closeOf[index]!;
      let image = '';
      for (let part = index; part <= last; part++) image += read[part]!.image;
      tokens ??= read.slice(0, index);
      take({ ...token, image, tokenType: Unreadable, tokenTypeIdx: Unreadable.tokenTypeIdx! });
      settled = false;
      index = last;
      continue;
    }
    if (type === Open) {
      if (trusted[index] === 0) settled = false;
      const inTrusted = stack[stack.length - 1]?.trusted ?? false;
      stack.push({ indent, trusted: inTrusted || trusted[index] === 1, indented: undefined });
    }
    take(token);
  }

  const last = (tokens ?? read)[(tokens ?? read).length - 1];
  if (last !== undefined && last.tokenType !== Newline) stream.push(unwritten(Newline));
  while (stack.length > 0) closeUnwritten();
  return { tokens: tokens ?? read, stream, settled, leastColumn };
}

/** Which open block a brace that leads its line closes; -1 if it closes none. */
function closedBy(column: number, stack: readonly OpenBlock[], index: number, plain: PlainMatch): number {
  const top = stack.length - 1;
  if (top < 0) return -1;
  const innermost = stack[top]!;
  if (innermost.indent === column || innermost.trusted) return top;
  for (let place = top - 1; place >= 0; place--) {
    if (stack[place]!.indent === column) return place;
  }
  // Further in than the block that it would close, with a brace too many still to come: it is itself the one too many.
  return column > innermost.indent && plain.lastStray > index ? -1 : top;
}

/** Whether a statement at this column shows that the innermost block has ended without a brace. */
function closesByIndent(
  column: number,
  index: number,
  stack: readonly OpenBlock[],
  tokens: readonly IToken[],
  columns: Int32Array,
): boolean {
  const top = stack[stack.length - 1]!;
  if (top.trusted || column > top.indent) return false;
  if (top.indented !== undefined) return top.indented;
  // Nothing stands in the block yet: it ends here only if the author indents at all.
  const outer = stack[stack.length - 2];
  return outer !== undefined ? outer.indent < top.indent : opensIndentedBlock(column, index, tokens, columns);
}

/** Whether the statement at `index` opens a block whose first line is further in. */
function opensIndentedBlock(column: number, index: number, tokens: readonly IToken[], columns: Int32Array): boolean {
  let opens = false;
  for (let next = index; next < tokens.length; next++) {
    const type = tokens[next]!.tokenType;
    if (next > index && columns[next] !== notFirst) return opens && type !== Close && columns[next]! > column;
    if (type === Open) opens = true;
    else if (type !== Newline && !isTrivia(tokens[next]!)) opens = false;
  }
  return false;
}
