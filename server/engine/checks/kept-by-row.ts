import type { Plan } from '../plan/plan';

/**
 * What is found at each item of a row (the steps of a plan, the entries of its walk), kept while the plan's head stands: of a
 * row that differs from the last one in a stretch, only that stretch is asked for. `find` gives what it finds at each item.
 */
export function keptByRow<Item, Found>(
  find: (plan: Plan, items: readonly Item[]) => readonly (readonly Found[])[],
): (plan: Plan, row: readonly Item[]) => readonly Found[] {
  interface Kept {
    readonly row: readonly Item[];
    readonly each: readonly (readonly Found[])[];
    readonly all: readonly Found[];
  }
  const known = new WeakMap<Plan['head'], Kept>();
  const empty: Kept = { row: [], each: [], all: [] };
  return (plan, row) => {
    const last = known.get(plan.head) ?? empty;
    if (last.row === row) return last.all;
    const shorter = Math.min(row.length, last.row.length);
    let before = 0;
    while (before < shorter && row[before] === last.row[before]) before += 1;
    let behind = 0;
    while (behind < shorter - before && row[row.length - 1 - behind] === last.row[last.row.length - 1 - behind])
      behind += 1;
    const each = last.each
      .slice(0, before)
      .concat(find(plan, row.slice(before, row.length - behind)), last.each.slice(last.each.length - behind));
    const all: Found[] = [];
    for (const found of each) if (found.length > 0) all.push(...found);
    known.set(plan.head, { row, each, all });
    return all;
  };
}
