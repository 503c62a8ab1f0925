import { fromSI, standardAtmosphere } from './convert';
import { type Rung, rungs, twins } from './ladder';
import type { Literal } from './literal';
import type { Kind, Quantity } from './quantity';
import { type Unit, unitNamed } from './units';

export interface ShowOptions {
  /** Inch-pound unless said; `both` puts the figure of the other system in brackets behind. */
  readonly system?: 'inch-pound' | 'si' | 'both';
  /** The unit to show in; with `both` its twin stands in brackets. */
  readonly as?: string;
  /** How a pressure level reads; found from the level when left out. */
  readonly level?: 'gauge' | 'vacuum' | 'absolute';
  /** Pressure of the site's atmosphere, Pa: what gauge and vacuum readings count from. Sea level when left out. */
  readonly atmosphere?: number;
  /** Significant digits, three when left out. */
  readonly digits?: number;
  /** Inches as the nearest 1/64, where the figure is one. */
  readonly fraction?: boolean;
  /** Commas between thousands, as people read them; false for text that goes into a plan. */
  readonly grouped?: boolean;
}

/** Below this a vacuum is read with a micron gauge, Pa absolute: 22,500 micron, about where dial gauges say nothing. */
const micronLevel = 3000;
/** Weights from here on are shown in pounds alone, lb. */
const compoundBelow = 50;

/**
 * A quantity for people's eyes, with no more digits than it deserves: `12.5..14 scf`, `7 lb 4 oz`, `500 micron`,
 * `450 psig (3,100 kPa gauge)`. What a person wrote is shown by `showLiteral`, never by this.
 */
export function show(quantity: Quantity, options: ShowOptions = {}): string {
  const system = options.system ?? 'inch-pound';
  const named = options.as === undefined ? undefined : unitNamed(options.as);
  if (system !== 'both') {
    const unit = named ?? chosenUnit(quantity, system, options);
    return inUnit(quantity, unit, options, named === undefined);
  }
  const first = named ?? chosenUnit(quantity, 'inch-pound', options);
  const second = twinOf(first, quantity, options);
  const shown = inUnit(quantity, first, options, named === undefined);
  if (second === first || first === null || second === null) return shown;
  return `${shown} (${inUnit(quantity, second, options, false)})`;
}

/** What the author wrote, untouched. */
export const showLiteral = (literal: Literal): string => literal.text;

function chosenUnit(quantity: Quantity, system: 'inch-pound' | 'si', options: ShowOptions): Unit | null {
  if (quantity.kind === 'count') return null;
  if (quantity.kind === 'pressure') return levelUnit(quantity, system, options);
  const ladder = rungs[quantity.kind][system];
  return rungFor(ladder, Math.max(Math.abs(quantity.low), Math.abs(quantity.high)));
}

function rungFor(ladder: readonly Rung[], size: number): Unit {
  // A hair less than the step counts as the step, so that a converted 12 in shows as 1 ft.
  const rung = ladder.find(([, below]) => size < below * (1 - 1e-9)) ?? ladder.at(-1)!;
  return unitNamed(rung[0])!;
}

function levelUnit(quantity: Quantity, system: 'inch-pound' | 'si', options: ShowOptions): Unit {
  const atmosphere = options.atmosphere ?? standardAtmosphere;
  const { high } = quantity;
  // One part in a million below the atmosphere is rounding, not vacuum.
  const found = high >= atmosphere * (1 - 1e-6) ? 'gauge' : high < micronLevel ? 'micron' : 'vacuum';
  const level = options.level ?? found;
  const imperial = {
    gauge: 'psig',
    vacuum: 'inHg',
    absolute: high < micronLevel ? 'micron' : 'psia',
    micron: 'micron',
  };
  const metric = {
    gauge: 'kPa gauge',
    vacuum: 'kPa vacuum',
    absolute: high < micronLevel ? 'Pa absolute' : 'kPa absolute',
    micron: 'Pa absolute',
  };
  return unitNamed((system === 'si' ? metric : imperial)[level])!;
}

/** The unit of the other system that stands in brackets behind `unit`; null where both systems read the same. */
function twinOf(unit: Unit | null, quantity: Quantity, options: ShowOptions): Unit | null {
  if (unit === null) return null;
  const ladder = twins[unit.name];
  if (ladder !== undefined) return rungFor(ladder, Math.max(Math.abs(quantity.low), Math.abs(quantity.high)));
  const level = options.level ?? unit.reference;
  const other = unit.system === 'si' ? 'inch-pound' : 'si';
  const twin = chosenUnit(quantity, other, level === undefined ? options : { ...options, level });
  return unit.system === 'both' && twin?.system === 'both' ? null : twin;
}

function inUnit(quantity: Quantity, unit: Unit | null, options: ShowOptions, compound: boolean): string {
  const { kind } = quantity;
  const atmosphere = options.atmosphere ?? standardAtmosphere;
  const ends = [quantity.low, quantity.high].map((end) => (unit === null ? end : fromSI(end, unit, kind, atmosphere)));
  const low = Math.min(...ends);
  const high = Math.max(...ends);
  if (compound && unit?.name === 'lb' && Math.abs(high) < compoundBelow) return pounds(low, high);
  const lowText = figure(low, unit, kind, options);
  const highText = figure(high, unit, kind, options);
  const name = unit === null ? '' : ` ${nameFor(unit, highText)}`;
  return lowText === highText ? `${highText}${name}` : `${lowText}..${highText}${name}`;
}

const nameFor = (unit: Unit, figureText: string): string =>
  figureText === '1' && (unit.name === 'days' || unit.name === 'weeks') ? unit.name.slice(0, -1) : unit.name;

/** Decimals beyond which no gauge or scale of the trade reads, whatever the size of the figure. */
const finestDecimals: Readonly<Record<string, number>> = {
  psig: 1,
  inHg: 1,
  'kPa gauge': 1,
  'kPa vacuum': 1,
  degF: 1,
  degC: 1,
  'Δ°F': 1,
  'Δ°C': 1,
  oz: 1,
  s: 1,
};

function figure(value: number, unit: Unit | null, kind: Kind, options: ShowOptions): string {
  if (options.fraction === true && unit?.name === 'in') {
    const text = fractionOf(value);
    if (text !== null) return text;
  }
  const digits = options.digits ?? 3;
  let rounded = value === 0 ? 0 : Number(value.toPrecision(Math.min(17, Math.max(1, digits))));
  if (kind === 'count' && options.digits === undefined) rounded = value;
  const finest = options.digits === undefined && unit !== null ? finestDecimals[unit.name] : undefined;
  if (finest !== undefined) rounded = Number(rounded.toFixed(finest));
  if (kind === 'temperature' && unit !== null) rounded = notBelowAbsoluteZero(rounded, unit);
  return plain(rounded, options.grouped ?? true);
}

/** What was rounded past absolute zero (-459.67 degF to -460) could not be read back: it is cut to the tenth above it. */
function notBelowAbsoluteZero(rounded: number, unit: Unit): number {
  const zero = fromSI(0, unit, 'temperature');
  return rounded < zero ? Math.ceil(zero * 10) / 10 : rounded;
}

/** A number without exponent, without trailing zeros and without a minus before nothing. */
function plain(value: number, grouped: boolean): string {
  if (!Number.isFinite(value)) return 'unknown';
  const size = Math.abs(value);
  const short = String(size);
  const text = short.includes('e')
    ? size < 1
      ? size.toFixed(20).replace(/\.?0+$/, '')
      : BigInt(Math.round(size)).toString()
    : short;
  const [whole = '0', decimals] = text.split('.');
  const spaced = grouped ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  const shown = decimals === undefined ? spaced : `${spaced}.${decimals}`;
  return value < 0 && shown !== '0' ? `-${shown}` : shown;
}

/** `1-1/8` for 1.125 in; null where the figure is no 1/64 to within half a thousandth. */
function fractionOf(value: number): string | null {
  const parts = Math.round(Math.abs(value) * 64);
  if (Math.abs(Math.abs(value) - parts / 64) > 0.0005) return null;
  const whole = Math.floor(parts / 64);
  let over = parts % 64;
  let under = 64;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  const sign = value < 0 && parts > 0 ? '-' : '';
  if (over === 0) return `${sign}${whole}`;
  return whole === 0 ? `${sign}${over}/${under}` : `${sign}${whole}-${over}/${under}`;
}

/** Pounds and whole ounces, as scales in the trade read. */
function pounds(low: number, high: number): string {
  const one = (value: number): string => {
    const ounces = Math.round(Math.abs(value) * 16);
    const whole = Math.floor(ounces / 16);
    const rest = ounces % 16;
    const sign = value < 0 && ounces > 0 ? '-' : '';
    if (rest === 0) return `${sign}${whole} lb`;
    return whole === 0 ? `${sign}${rest} oz` : `${sign}${whole} lb ${rest} oz`;
  };
  const [from, to] = [one(low), one(high)];
  return from === to ? to : `${from}..${to}`;
}
