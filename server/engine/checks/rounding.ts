import type { Amount } from '../plan/term';
import { fromSI, toSI } from '../quantity';

/** Rounding that moves a figure by more than this is another figure. 66.7 Pa as 70 Pa is 5 % off. */
const mostMoved = 0.055;
/** A limit that comes out this near to three figures in a unit was stated in that unit, and nobody rounds it there. */
const asStated = 1e-6;

/**
 * A limit as people write it in another unit: 500 micron is 66.7 Pa, and stands in plans as 70 Pa, 0.7 mbar or 0.67 mbar.
 * Gives the limit (SI) rounded to one, two or three figures in the unit of `amount`, the `most` or the `least` that it comes to;
 * the limit itself where it was stated in that unit. Vacuum readings count down from the atmosphere, where a last digit is
 * more than the whole level: these are not rounded.
 */
export function roundedLimit(
  limit: number,
  amount: Amount | undefined,
  atmosphere: number,
  way: 'most' | 'least',
): number {
  if (!amount?.literal || amount.literal.unit.reference === 'vacuum') return limit;
  const { unit } = amount.literal;
  const value = fromSI(limit, unit, amount.kind, atmosphere);
  const near = [1, 2, 3].map((digits) => Number(value.toPrecision(digits)));
  if (Math.abs(near[2]! - value) <= Math.abs(value) * asStated) return limit;
  const written = near
    .filter((each) => Math.abs(each - value) <= Math.abs(value) * mostMoved)
    .map((each) => toSI(each, unit, amount.kind, atmosphere));
  return way === 'most' ? Math.max(limit, ...written) : Math.min(limit, ...written);
}
