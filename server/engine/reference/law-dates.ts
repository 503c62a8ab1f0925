import data from './law-dates.json';
import type { LawDatesTable } from './law-dates.schema';

export type LawDate = LawDatesTable['rows'][number];

export const lawDates: readonly LawDate[] = (data as LawDatesTable).rows;

/** A rule by its name; undefined where there is none. */
export const lawDateNamed = (name: string): LawDate | undefined => lawDates.find((row) => row.name === name);

/** Whether a rule holds on a day (ISO). An unknown rule holds never. */
export const inForce = (name: string, date: string): boolean => {
  const row = lawDateNamed(name);
  return row !== undefined && date >= row.from;
};
