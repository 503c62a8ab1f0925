/**
 * The edit distance of two words in which a swap of neighbours counts once, or `most + 1` as soon as it must be more.
 * Cost grows with the product of the lengths, so callers cut long words off first.
 */
export function editDistance(from: string, to: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(from.length - to.length) > most) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row++) {
    const current = [row];
    let least = row;
    for (let column = 1; column <= to.length; column++) {
      const same = from[row - 1] === to[column - 1];
      let cost = Math.min(last[column]! + 1, current[column - 1]! + 1, last[column - 1]! + (same ? 0 : 1));
      if (row > 1 && column > 1 && from[row - 1] === to[column - 2] && from[row - 2] === to[column - 1]) {
        cost = Math.min(cost, beforeLast[column - 2]! + 1);
      }
      current.push(cost);
      least = Math.min(least, cost);
    }
    if (least > most) return most + 1;
    beforeLast = last;
    last = current;
  }
  return last[to.length]!;
}

/** Words longer than this are compared by their beginning only: no word of a plan is so long by intent. */
const longest = 64;

/**
 * The candidate that was most likely meant, or undefined when none is near: about one slip in three letters, and never so
 * many that a short word is wholly another one. A difference of capitals alone always counts as near. Of equals the
 * first wins.
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const wanted = word.slice(0, longest);
  const small = wanted.toLowerCase();
  const allowed = wanted.length === 2 ? 1 : Math.min(3, Math.floor(wanted.length / 3));
  let best: string | undefined;
  let bestCost = allowed + 0.75;
  for (const candidate of candidates) {
    if (candidate === word) return candidate;
    const given = candidate.slice(0, longest);
    const slips = editDistance(small, given.toLowerCase(), allowed);
    if (slips > allowed || slips >= Math.max(given.length, wanted.length)) continue;
    // Of candidates with as many slips, the one that begins alike is likelier.
    const cost = slips + (given[0] === wanted[0] ? 0 : 0.25);
    if (cost < bestCost) {
      best = candidate;
      bestCost = cost;
    }
  }
  return best;
}

/** Letters from which a name may have two slips. */
const longName = 8;

/** One slip, or two in a long name: `txv-2` for `txv2`. Another word behind a hyphen is another thing, not a slip. */
export const isSlip = (noun: string, name: string): boolean => {
  const most = noun.length < longName ? 1 : 2;
  return editDistance(noun.toLowerCase(), name.toLowerCase(), most) <= most;
};
