import data from './first-charge.json';
import type { FirstChargeTable } from './first-charge.schema';
import type { Confidence } from './source';

const table = data as unknown as FirstChargeTable;

export const firstChargeSource = table.source;
export const firstChargeConfidence: Confidence = table.confidence;

/** The share of the old charge to start with when going from one refrigerant to another; undefined where no guide says. */
export const firstChargeRange = (
  from: string,
  to: string,
): { readonly low: number; readonly high: number } | undefined => {
  const row = table.rows.find((one) => one.to.includes(to) && one.from.includes(from));
  return row && { low: row.percent[0] / 100, high: row.percent[1] / 100 };
};
