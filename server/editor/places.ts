import { blockStart } from '../../grammar/locate';
import type { Item, Statement, Tree } from '../../grammar/tree';

interface Standing {
  /** The statement whose block the item stands in; null for an item of the file itself. */
  within: Statement | null;
  /** Offset from the start of that statement, or of the file. */
  at: number;
}

/**
 * Finds where items stand in the newest tree of a file. An item that an edit leaves alone keeps its identity, so a block
 * that was seen before is not looked into again: following an edit costs the blocks around it, not the whole file.
 */
export class ItemPlaces {
  private readonly standing = new WeakMap<Item, Standing>();
  private readonly seen = new WeakSet<Statement>();
  private tree: Tree | undefined;

  /** Offset of an item from the start of the file, or undefined when this tree does not hold the item. */
  offsetOf(tree: Tree, item: Item): number | undefined {
    if (this.tree !== tree) {
      this.place(tree.items, tree.mark.length, null);
      this.tree = tree;
    }
    let offset = 0;
    let at: Item | null = item;
    while (at !== null) {
      const stands = this.standing.get(at);
      if (stands === undefined) return undefined;
      offset += stands.at;
      at = stands.within;
    }
    return offset;
  }

  private place(items: readonly Item[], start: number, within: Statement | null): void {
    const waiting: { items: readonly Item[]; start: number; within: Statement | null }[] = [{ items, start, within }];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      let at = next.start;
      for (const item of next.items) {
        const stands = this.standing.get(item);
        if (stands === undefined) this.standing.set(item, { within: next.within, at });
        else {
          stands.within = next.within;
          stands.at = at;
        }
        if (item.kind === 'statement' && item.block !== null && !this.seen.has(item)) {
          this.seen.add(item);
          waiting.push({ items: item.block.items, start: blockStart(item), within: item });
        }
        at += item.length;
      }
    }
  }
}
