/** The lines that one text has and the other has not, each in its order: what is left beside their longest common part. */
export function differentLines(
  before: readonly string[],
  now: readonly string[],
): { readonly gone: readonly string[]; readonly come: readonly string[] } {
  // Length of the longest common part of what follows, by line of either text.
  const common = Array.from({ length: before.length + 1 }, () => new Array<number>(now.length + 1).fill(0));
  for (let a = before.length - 1; a >= 0; a--) {
    for (let b = now.length - 1; b >= 0; b--) {
      common[a]![b] =
        before[a] === now[b] ? common[a + 1]![b + 1]! + 1 : Math.max(common[a + 1]![b]!, common[a]![b + 1]!);
    }
  }
  const gone: string[] = [];
  const come: string[] = [];
  let [a, b] = [0, 0];
  while (a < before.length || b < now.length) {
    if (a < before.length && b < now.length && before[a] === now[b]) [a, b] = [a + 1, b + 1];
    else if (b < now.length && (a === before.length || common[a]![b + 1]! >= common[a + 1]![b]!)) come.push(now[b++]!);
    else gone.push(before[a++]!);
  }
  return { gone, come };
}
