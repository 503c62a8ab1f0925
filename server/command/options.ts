import { InvalidArgumentError, Option } from 'commander';
import type { Severity } from '../engine/finding';
import type { Words } from './description';
import type { Host } from './host';

export type Units = 'inch-pound' | 'si' | 'both';

const units = ['inch-pound', 'si', 'both'] as const;

export const unitsOption = new Option('--units <units>', 'units of figures for people')
  .choices(units)
  .default('inch-pound');
/** A sheet has the units of its plan, and the others small behind them, unless one system is asked for. */
export const sheetUnitsOption = new Option('--units <units>', 'one system of units alone')
  .choices(units)
  .default('both');
export const unitsIn = (words: Words): Units => words.option<Units>('units') ?? 'inch-pound';

export const formatOption = (...formats: readonly string[]): Option =>
  new Option('--format <format>', 'how the result is written').choices(formats).default('text');
export const wantsJson = (words: Words): boolean => words.option('format') === 'json';

export const failOnOption = new Option('--fail-on <severity>', 'the least finding that makes the exit status 1')
  .choices(['error', 'warning', 'information'])
  .default('error');

const gravity: Readonly<Record<Severity, number>> = { information: 0, warning: 1, error: 2 };

/** Whether a finding is as grave as `--fail-on` asks, or graver. */
export function failsOn(words: Words): (finding: { readonly severity: Severity }) => boolean {
  const least = gravity[words.option<Severity>('failOn') ?? 'error'];
  return ({ severity }) => gravity[severity] >= least;
}

/** A day of the calendar, written `2027-05-18`. */
function day(text: string): string {
  const date = new Date(`${text}T00:00:00Z`);
  const real = /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(date.getTime());
  if (!real || date.toISOString().slice(0, 10) !== text) {
    throw new InvalidArgumentError('Write a day as 2027-05-18.');
  }
  return text;
}

export const todayOption = new Option(
  '--today <date>',
  'for rules that depend on a day, where the plan states none',
).argParser(day);

/** The day that rules go by in plans without a date. */
export const dayOf = (host: Host, words: Words): string => words.option('today') ?? host.today();

export const planOption = new Option('--plan <name>', 'which plan, where the file holds several');
