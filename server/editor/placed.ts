import { blockStart } from '../../grammar';
import type { Item } from '../../grammar/tree';
import type { Bound } from '../engine/plan/bind';
import type { BoundFile } from './engine';

/**
 * Visits the bound statements of a file from the top down, each with its offset in the file and what the visit of the
 * statement around it gave. What is in a block is left out where a visit gives undefined.
 */
export function forEachPlaced<T>(
  file: BoundFile,
  visit: (bound: Bound, at: number, around: T) => T | undefined,
  outermost: T,
): void {
  visitItems(file.tree.items, file.statements, file.tree.mark.length, outermost, visit);
}

function visitItems<T>(
  items: readonly Item[],
  bounds: readonly Bound[],
  start: number,
  around: T,
  visit: (bound: Bound, at: number, around: T) => T | undefined,
): void {
  let at = start;
  let next = 0;
  for (const item of items) {
    const bound = bounds[next];
    if (item.kind === 'statement' && bound?.item === item) {
      next += 1;
      const inside = visit(bound, at, around);
      if (inside !== undefined && item.block !== null && bound.block.length > 0)
        visitItems(item.block.items, bound.block, at + blockStart(item), inside, visit);
    }
    at += item.length;
  }
}

/** As `forEachPlaced`, but only statements that touch the offsets `from` to `to`. */
export function forEachPlacedIn(
  file: BoundFile,
  from: number,
  to: number,
  visit: (bound: Bound, at: number) => void,
): void {
  forEachPlaced<true>(
    file,
    (bound, at) => {
      if (at > to || at + bound.item.length < from) return undefined;
      visit(bound, at);
      return true;
    },
    true,
  );
}
