/** Makes the tree's parts of the tokens that the parser has gathered, and says what is wrong with them. */
import type { IToken } from 'chevrotain';
import { fault } from './faults';
import { kindOf } from './tokens';
import type { Blank, Block, Item, Statement, Stray, SyntaxFault, Token } from './tree';

/** Places the tokens one behind the other, the first at `from`. */
function place(tokens: readonly IToken[], from: number): Token[] {
  let at = from;
  return tokens.map((token) => {
    const placed: Token = { kind: kindOf(token), text: token.image, at };
    at += token.image.length;
    return placed;
  });
}

export function lengthOf(tokens: readonly Token[]): number {
  const last = tokens[tokens.length - 1];
  return last === undefined ? 0 : last.at + last.text.length - tokens[0]!.at;
}

export function isTrivia(token: Token): boolean {
  return token.kind === 'space' || token.kind === 'comment' || token.kind === 'newline';
}

/** What is wrong with the tokens themselves, wherever they stand. */
function tokenFaults(tokens: readonly Token[]): SyntaxFault[] {
  const faults: SyntaxFault[] = [];
  for (const { kind, text, at } of tokens) {
    if (kind === 'string' && (text.length === 1 || !text.endsWith('"'))) {
      faults.push(fault('unclosed-quote', at, at + text.length));
    } else if (kind === 'error') {
      // Only a block that was left unread begins with a brace.
      if (text.startsWith('{')) faults.push(fault('too-deep', at, at + 1));
      else faults.push(fault('unreadable-text', at, at + text.length));
    }
  }
  return faults;
}

export function makeBlank(tokens: readonly IToken[]): Blank {
  const head = place(tokens, 0);
  return { kind: 'blank', head, length: lengthOf(head), faults: [] };
}

export function makeStray(tokens: readonly IToken[]): Stray {
  const head = place(tokens, 0);
  const brace = head.find(({ kind }) => kind === 'close')!;
  return {
    kind: 'stray',
    head,
    length: lengthOf(head),
    faults: [fault('stray-brace', brace.at, brace.at + 1)],
  };
}

export function makeBlock(items: readonly Item[], closing: readonly IToken[]): Block {
  let length = 0;
  for (const item of items) length += item.length;
  const close = place(closing, length);
  return { kind: 'block', items, close, length: length + lengthOf(close) };
}

/**
 * `head` ends with the last term or the block's opening brace. `end` is the rest of the line, with its newline.
 * `behindBlock`: the statement follows the closing brace of another one on the same line.
 */
export function makeStatement(
  head: readonly IToken[],
  block: Block | null,
  end: readonly IToken[],
  behindBlock: boolean,
): Statement {
  const placed = place(block === null ? [...head, ...end] : head, 0);
  const headLength = lengthOf(placed);
  const tail = block === null ? [] : place(end, headLength + block.length);
  const significant = placed.filter((token) => !isTrivia(token) && token.kind !== 'open');
  const label = significant[0]?.kind === 'word' && significant[1]?.kind === 'colon' ? significant[0] : null;
  const rest = label === null ? significant : significant.slice(2);
  const word = rest[0]?.kind === 'word' ? rest[0] : null;
  const terms = word === null ? rest : rest.slice(1);

  const faults: SyntaxFault[] = [];
  const start = placed.find((token) => !isTrivia(token))!;
  const last = significant[significant.length - 1] ?? start;
  if (behindBlock) faults.push(fault('text-after-block', start.at, last.at + last.text.length));
  if (word === null) {
    const missing = rest[0] ?? significant[1] ?? start;
    faults.push(fault('missing-word', missing.at, missing.at + missing.text.length));
  }
  faults.push(...tokenFaults(placed));
  if (block !== null && block.close.length === 0) {
    const brace = placed[placed.length - 1]!;
    faults.push(fault('unclosed-brace', brace.at, brace.at + 1));
  }
  return {
    kind: 'statement',
    head: placed,
    block,
    tail,
    length: headLength + (block?.length ?? 0) + lengthOf(tail),
    faults,
    label,
    word,
    terms,
  };
}
