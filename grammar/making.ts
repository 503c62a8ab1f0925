/** Makes the tree's parts of the tokens that the parser has gathered, and says what is wrong with them. */
import { fault } from './faults';
import type { Blank, Block, Item, Statement, Stray, SyntaxFault, Token } from './tree';

const noFaults: readonly SyntaxFault[] = [];

/** Offset behind the last token, from where the offsets of all of them count. */
export function endOf(tokens: readonly Token[]): number {
  const last = tokens[tokens.length - 1];
  return last === undefined ? 0 : last.at + last.text.length;
}

export function lengthOf(tokens: readonly Token[]): number {
  return tokens.length === 0 ? 0 : endOf(tokens) - tokens[0]!.at;
}

export function lengthOfAll(items: readonly Item[]): number {
  let length = 0;
  for (const item of items) length += item.length;
  return length;
}

export function isTrivia(token: Token): boolean {
  return token.kind === 'space' || token.kind === 'comment' || token.kind === 'newline';
}

export function makeBlank(head: readonly Token[]): Blank {
  return { kind: 'blank', head, length: endOf(head), faults: noFaults };
}

/** Braces that follow each other on a line make one stray, with one fault over all of them. */
export function makeStray(head: readonly Token[]): Stray {
  let from = -1;
  let to = 0;
  for (const { kind, at } of head) {
    if (kind !== 'close') continue;
    if (from < 0) from = at;
    to = at + 1;
  }
  return { kind: 'stray', head, length: endOf(head), faults: [fault('stray-brace', from, to)] };
}

/** `length` is that of the items. */
export function makeBlock(items: readonly Item[], length: number, close: readonly Token[]): Block {
  return { kind: 'block', items, close, length: length + lengthOf(close) };
}

/**
 * `head` ends with the newline or the block's opening brace, or with the last term where the block around ends.
 * `behindBlock`: the statement follows the closing brace of another one on the same line.
 */
export function makeStatement(
  head: readonly Token[],
  block: Block | null,
  tail: readonly Token[],
  behindBlock: boolean,
): Statement {
  const terms: Token[] = [];
  for (const token of head) if (!isTrivia(token) && token.kind !== 'open') terms.push(token);
  const last = terms[terms.length - 1];
  const first = terms[0];
  const label = first?.kind === 'word' && terms[1]?.kind === 'colon' ? first : null;
  if (label !== null) terms.splice(0, 2);
  const word = terms[0]?.kind === 'word' ? terms.shift()! : null;

  const faults: SyntaxFault[] = [];
  if (behindBlock || word === null) {
    const start = first ?? head.find(({ kind }) => kind === 'open')!;
    if (behindBlock) faults.push(fault('text-after-block', start.at, endOf([last ?? start])));
    if (word === null) {
      const instead = terms[0] ?? last ?? start;
      faults.push(fault('missing-word', instead.at, endOf([instead])));
    }
  }
  addTokenFaults(head, faults);
  if (block !== null && block.close.length === 0) {
    const brace = head[head.length - 1]!;
    faults.push(fault('unclosed-brace', brace.at, brace.at + 1));
  }
  return {
    kind: 'statement',
    head,
    block,
    tail,
    length: endOf(head) + (block === null ? 0 : block.length + lengthOf(tail)),
    faults: faults.length === 0 ? noFaults : faults,
    label,
    word,
    terms,
  };
}

/** Faults of one statement's tokens that are told: behind these, more of them help nobody. */
const mostFaults = 20;

/** What is wrong with the tokens themselves, wherever they stand. */
function addTokenFaults(tokens: readonly Token[], faults: SyntaxFault[]): void {
  for (const { kind, text, at } of tokens) {
    if (faults.length >= mostFaults) return;
    if (kind === 'string' && (text.length === 1 || !text.endsWith('"'))) {
      faults.push(fault('unclosed-quote', at, at + text.length));
    } else if (kind === 'error') {
      // Only a block that was left unread begins with a brace.
      if (text.startsWith('{')) faults.push(fault('too-deep', at, at + 1));
      else faults.push(fault('unreadable-text', at, at + text.length));
    }
  }
}
