import { itemAt, type PlacedItem } from '../../grammar';
import type { Statement, Token } from '../../grammar/tree';
import type { Bound } from '../engine/plan/bind';
import type { Place, Word } from '../engine/plan/vocabulary';
import type { BoundFile } from './engine';

/** A bound statement and where it stands, an offset of the file. */
export interface PlacedBound {
  readonly bound: Bound;
  readonly at: number;
}

/** What stands at an offset of a file: the statements around it, what they mean, and the token. */
export interface Look {
  readonly offset: number;
  /** Items around the offset, the outermost first. */
  readonly path: readonly PlacedItem[];
  /** The bound ones of these, the outermost first; it ends where a word is unknown. */
  readonly chain: readonly PlacedBound[];
  /** The token at the offset, or the one that ends there; blanks do not count. `at` is an offset of the file. */
  readonly token: { readonly token: Token; readonly at: number } | undefined;
  /** The innermost statement, if it is bound. */
  readonly bound: PlacedBound | undefined;
}

/** Looks at an offset. Between two tokens the one behind the offset counts, then the one before it. */
export function lookAt(file: BoundFile, offset: number): Look {
  const here = look(file, offset);
  if (offset === 0 || (here.token !== undefined && isSolid(here.token.token))) return here;
  const before = look(file, offset - 1);
  return before.token !== undefined && isSolid(before.token.token)
    ? { ...before, offset }
    : { ...here, token: undefined };
}

const isSolid = (token: Token): boolean =>
  token.kind !== 'space' && token.kind !== 'newline' && token.kind !== 'comma' && token.kind !== 'colon';

function look(file: BoundFile, offset: number): Look {
  const { path, token } = itemAt(file.tree, offset);
  const chain = chainOf(file, path);
  const innermost = path.at(-1);
  const last = chain.at(-1);
  const bound = last !== undefined && last.bound.item === innermost?.item ? last : undefined;
  const start = innermost === undefined || token === undefined ? undefined : startOf(innermost, token, offset);
  return { offset, path, chain, token: token && start !== undefined ? { token, at: start } : undefined, bound };
}

/** A token counts from its item's start, one of a block's end from the block's start; the one around the offset is meant. */
function startOf({ item, at }: PlacedItem, token: Token, offset: number): number {
  const direct = at + token.at;
  if (direct <= offset && offset < direct + token.text.length && item.head.includes(token)) return direct;
  if (item.kind !== 'statement' || item.block === null || !item.block.close.includes(token)) return direct;
  const last = item.head.at(-1);
  return at + (last ? last.at + last.text.length : 0) + token.at;
}

/** The bound statements of a path of items; it ends at the first whose word is not known. */
export function chainOf(file: BoundFile, path: readonly PlacedItem[]): readonly PlacedBound[] {
  const chain: PlacedBound[] = [];
  let among = file.statements;
  for (const { item, at } of path) {
    if (item.kind !== 'statement') break;
    const bound = among.find((each) => each.item === item);
    if (bound === undefined) break;
    chain.push({ bound, at });
    among = bound.block;
  }
  return chain;
}

/** The place of the statements inside a bound statement's block; undefined where it takes none. */
export const placeInside = (word: Word | null): Place | undefined => word?.block;

/** The first offset behind a statement's head line, without its line end. */
export function headEnd(item: Statement): number {
  const last = [...item.head]
    .reverse()
    .find((token) => token.kind !== 'newline' && token.kind !== 'space' && token.kind !== 'comment');
  return last === undefined ? 0 : last.at + last.text.length;
}
