/** Names that one sentence holds; of more than these the rest is counted. */
const most = 12;

/** Names in a sentence: "liquid-line, txv-1 and suction-line"; of very many the first ones and how many others. */
export const listed = (names: readonly string[]): string => {
  if (names.length > most) return `${names.slice(0, most - 2).join(', ')} and ${names.length - most + 2} others`;
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
};
