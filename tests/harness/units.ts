/** The few units that the edits' rulings reckon in; each to SI, pressures over the atmosphere. */
const factors: Readonly<Record<string, readonly [kind: string, factor: number, offset: number]>> = {
  psig: ['pressure', 6894.76, 0],
  'kPa gauge': ['pressure', 1e3, 0],
  'MPa gauge': ['pressure', 1e6, 0],
  psi: ['difference', 6894.76, 0],
  kPa: ['difference', 1e3, 0],
  Pa: ['difference', 1, 0],
  micron: ['vacuum', 0.133322, 0],
  torr: ['vacuum', 133.322, 0],
  'Pa absolute': ['vacuum', 1, 0],
  inHg: ['recovery', 3386.39, 0],
  'kPa vacuum': ['recovery', 1e3, 0],
  cfh: ['flow', 7.8658e-6, 0],
  cfm: ['flow', 4.71947e-4, 0],
  'L/min': ['flow', 1.66667e-5, 0],
  s: ['time', 1, 0],
  min: ['time', 60, 0],
  h: ['time', 3600, 0],
  day: ['time', 86400, 0],
  days: ['time', 86400, 0],
  lb: ['mass', 0.45359237, 0],
  oz: ['mass', 0.0283495, 0],
  kg: ['mass', 1, 0],
  g: ['mass', 1e-3, 0],
  ft: ['length', 0.3048, 0],
  in: ['length', 0.0254, 0],
  m: ['length', 1, 0],
  'fl-oz': ['volume', 2.95735e-5, 0],
  L: ['volume', 1e-3, 0],
  'mgKOH/g': ['acid', 1, 0],
  '%': ['share', 0.01, 0],
};
const names = Object.keys(factors).sort((a, b) => b.length - a.length);

export interface Found {
  readonly from: number;
  readonly to: number;
  readonly number: number;
  readonly unit: string;
  readonly key: string;
}

/** Numbers with a unit in a line, not those within quotation marks. */
export function figuresIn(line: string): readonly Found[] {
  const plain = line.replace(/"[^"]*"/g, (quoted) => ' '.repeat(quoted.length)).replace(/#.*/, '');
  const found: Found[] = [];
  for (const match of plain.matchAll(/(?<![\w./-])(\d+(?:\.\d+)?) /g)) {
    const from = match.index;
    const after = plain.slice(from + match[0].length);
    const unit = names.find((each) => after.startsWith(each) && !/[\w/-]/.test(after[each.length] ?? ' '));
    if (unit === undefined) continue;
    const key =
      /((?:rise |pressure )?at most|with nitrogen at|with \S+|to \S+|leaving|within|after|above|least|low|high|\S+) $/.exec(
        plain.slice(0, from),
      );
    found.push({ from, to: from + match[1]!.length, number: Number(match[1]), unit, key: (key?.[1] ?? '').trim() });
  }
  return found;
}

/** The SI value of a number in a unit; null where the unit is not one of these. */
export function inSI(number: number, unit: string): number | null {
  const known = factors[unit];
  return known ? number * known[1] + known[2] : null;
}
export const kindOf = (unit: string): string | null => factors[unit]?.[0] ?? null;
