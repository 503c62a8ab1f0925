import type { Confidence } from './source';
import data from './superheat-targets.json';
import type { SuperheatTable } from './superheat-targets.schema';
import { fahrenheit, fahrenheitDifference } from './table-units';

const table = data as SuperheatTable;

export const superheatSource = table.source;
export const superheatConfidence: Confidence = table.confidence;
/** Where the table holds, K. */
export const superheatWindow = {
  outdoors: [fahrenheit(table.rows[0]!.outdoors), fahrenheit(table.rows[table.rows.length - 1]!.outdoors)],
  wetBulb: [fahrenheit(table.wetBulb[0]!), fahrenheit(table.wetBulb[table.wetBulb.length - 1]!)],
} as const;

const inFahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67;

/** Index of the cell that `value` falls into and how far along it, or null outside the axis. */
const place = (axis: readonly number[], value: number): { index: number; along: number } | null => {
  const slack = 1e-6;
  if (value < axis[0]! - slack || value > axis[axis.length - 1]! + slack) return null;
  let index = axis.findIndex((_, i) => i < axis.length - 1 && value <= axis[i + 1]! + slack);
  if (index < 0) index = axis.length - 2;
  return { index, along: Math.min(1, Math.max(0, (value - axis[index]!) / (axis[index + 1]! - axis[index]!))) };
};

/**
 * Target superheat at the suction port in K for a fixed orifice, straight between the printed cells. Temperatures in K.
 * Null outside the table and where one of the cells around is blank (under 5 °F: do not charge that way).
 */
export const targetSuperheat = (outdoors: number, returnWetBulb: number): number | null => {
  const row = place(
    table.rows.map((one) => one.outdoors),
    inFahrenheit(outdoors),
  );
  const column = place(table.wetBulb, inFahrenheit(returnWetBulb));
  if (row === null || column === null) return null;
  const cell = (down: number, across: number): number | null => {
    const weight = (down === 0 ? 1 - row.along : row.along) * (across === 0 ? 1 - column.along : column.along);
    if (weight < 1e-9) return 0;
    const value = table.rows[row.index + down]?.superheat[column.index + across];
    return value === null || value === undefined ? null : value * weight;
  };
  let sum = 0;
  for (const part of [cell(0, 0), cell(0, 1), cell(1, 0), cell(1, 1)]) {
    if (part === null) return null;
    sum += part;
  }
  return sum * fahrenheitDifference;
};

/** The trade's formula for the same, (3 × wet bulb - 80 - outdoors) / 2 in °F: up to 6.5 °F off the table in great heat. K. */
export const superheatByFormula = (outdoors: number, returnWetBulb: number): number =>
  ((3 * inFahrenheit(returnWetBulb) - 80 - inFahrenheit(outdoors)) / 2) * fahrenheitDifference;
