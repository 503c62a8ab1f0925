import type { EndState, PartState, Plant } from '../circuit/state';

/** Whether two plants stand alike in every respect, causes compared by identity. */
export function samePlant(a: Plant, b: Plant): boolean {
  if (a === b) return true;
  return (
    a.graph === b.graph &&
    a.power === b.power &&
    a.running === b.running &&
    a.resumes === b.resumes &&
    a.powerBy === b.powerBy &&
    a.atmosphere === b.atmosphere &&
    sameMap(a.lockedOut, b.lockedOut) &&
    sameMap(a.bypassed, b.bypassed) &&
    sameMap(a.marks, b.marks) &&
    sameList<PartState>(a.parts, b.parts) &&
    sameList<EndState>(a.ends, b.ends)
  );
}

const sameList = <T>(a: readonly T[], b: readonly T[]): boolean =>
  a === b || (a.length === b.length && a.every((each, k) => alike(each, b[k], 3)));

/** In the same order, too: what is told of a map is told in its order. */
function sameMap<K, V>(a: ReadonlyMap<K, V>, b: ReadonlyMap<K, V>): boolean {
  if (a === b) return true;
  if (a.size !== b.size) return false;
  const others = b.entries();
  for (const [key, value] of a) {
    const other = others.next().value;
    if (other === undefined || other[0] !== key || other[1] !== value) return false;
  }
  return true;
}

/** Plain data alike to a depth; handles of steps (`word`) are told apart by identity alone. */
function alike(a: unknown, b: unknown, depth: number): boolean {
  if (a === b) return true;
  if (depth === 0 || typeof a !== 'object' || typeof b !== 'object' || a === null || b === null || 'word' in a)
    return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => alike((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], depth - 1))
  );
}
