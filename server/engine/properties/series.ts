/**
 * Chebyshev series as the tables hold them. For a domain [low, high] the variable x = (2 v - low - high) / (high - low)
 * runs from -1 to 1; f = c0 + c1 T1(x) + c2 T2(x) + ..., c0 in full. A series runs away outside its domain, so that
 * nothing here is called there.
 */
export type Series = readonly number[];
/** f = sum of c[i][j] Ti(x) Tj(y); rows may differ in length and may be empty. */
export type Surface = readonly Series[];
export type Domain = readonly [low: number, high: number];

/** Rounding allowed at the ends of a domain, in the unit of the domain. */
const edge = 1e-9;

export const inside = (value: number, domain: Domain): boolean =>
  value >= domain[0] - edge && value <= domain[1] + edge;

export const toUnit = (value: number, domain: Domain): number =>
  (2 * value - domain[0] - domain[1]) / (domain[1] - domain[0]);

/** The sum of a series at x, by Clenshaw's recurrence. */
export function sumAt(series: Series, x: number): number {
  let next = 0;
  let afterNext = 0;
  for (let k = series.length - 1; k > 0; k--) {
    const current = series[k]! + 2 * x * next - afterNext;
    afterNext = next;
    next = current;
  }
  return (series[0] ?? 0) + x * next - afterNext;
}

/** The sum of a two-way series at x, y. */
export function sumOver(surface: Surface, x: number, y: number): number {
  let next = 0;
  let afterNext = 0;
  for (let k = surface.length - 1; k > 0; k--) {
    const current = sumAt(surface[k]!, y) + 2 * x * next - afterNext;
    afterNext = next;
    next = current;
  }
  return sumAt(surface[0] ?? [], y) + x * next - afterNext;
}

/** Newton's method halves the digits still wrong at each turn; ten turns are never reached on a saturation line. */
const mostTurns = 12;
/** Relative change of the temperature at which the search ends. */
const closeEnough = 1e-12;

/**
 * The temperature T at which a rising series of ln p over T reaches `target`. `low` and `high` are the values of the
 * series at the ends of the domain, and `target` lies between them. Since ln p is nearly straight over 1/T, the search
 * starts on that straight line and goes by Newton's method in 1/T, value and slope from one recurrence.
 */
export function temperatureWhere(series: Series, domain: Domain, target: number, low: number, high: number): number {
  const [from, to] = domain;
  const scale = 2 / (to - from);
  let inverse = 1 / from + ((target - low) / (high - low)) * (1 / to - 1 / from);
  let temperature = 1 / inverse;
  for (let turn = 0; turn < mostTurns; turn++) {
    const x = (temperature - from) * scale - 1;
    let next = 0;
    let afterNext = 0;
    let slopeNext = 0;
    let slopeAfterNext = 0;
    for (let k = series.length - 1; k > 0; k--) {
      const slope = 2 * next + 2 * x * slopeNext - slopeAfterNext;
      slopeAfterNext = slopeNext;
      slopeNext = slope;
      const current = series[k]! + 2 * x * next - afterNext;
      afterNext = next;
      next = current;
    }
    const value = series[0]! + x * next - afterNext;
    const slope = (next + x * slopeNext - slopeAfterNext) * scale;
    inverse -= (target - value) / (slope * temperature * temperature);
    // A step past the end of the table comes back to the end.
    const better = Math.min(to, Math.max(from, 1 / inverse));
    const change = Math.abs(better - temperature);
    temperature = better;
    inverse = 1 / better;
    if (change <= closeEnough * better) break;
  }
  return temperature;
}
