import { meantRefrigerant } from '../plan/refrigerants';
import { type Refrigerant, refrigerantNamed, trustWord, whyLeftOut } from '../properties';
import { between, type Kind, kindInWords, type Quantity, standardAtmosphere } from '../quantity';
import type { Confidence, Input } from './figure';
import type { Given } from './given';
import type { Context, InputSpec, InputSpecs } from './spec';

/** A value that may be a range, under its key; several of one key make a list. */
type Bound = Quantity | Refrigerant | string | undefined;

export interface Resolved {
  readonly inputs: Readonly<Record<string, Input>>;
  readonly values: Readonly<Record<string, Bound | readonly Bound[]>>;
  readonly missing: readonly string[];
  readonly refusals: readonly string[];
  readonly notes: readonly string[];
  readonly sources: readonly string[];
  readonly confidences: readonly Confidence[];
  /** How far the property tables asked, here or further up, are to be trusted. */
  readonly trust: readonly string[];
  /** Of these, those that a figure further up brought along. */
  readonly trustBefore: readonly string[];
}

/** An input as read: somebody's own text as it is, all else in the units and at the atmosphere of the figure. */
const shownOf = (given: Given, spec: InputSpec, context: Context): string =>
  given.said === true || given.quantity === null
    ? given.shown
    : `${context.tell(given.quantity, spec.as)}${given.of === undefined ? '' : ` (${given.of})`}`;

const isNamed = (kind: InputSpec['kind']): boolean => kind === 'refrigerant' || kind === 'word' || kind === 'date';

/** Whether a value lies where the relation holds, as a sentence when it doesn't. A hair outside is rounding. */
const outside = (spec: InputSpec, quantity: Quantity, given: Given, context: Context): string | null => {
  if (!Number.isFinite(quantity.low) || !Number.isFinite(quantity.high)) return `The ${spec.title} is no number.`;
  const signed = spec.kind === 'temperature-difference' || spec.kind === 'pressure-difference';
  const [least, most] = spec.valid ?? [signed ? Number.NEGATIVE_INFINITY : 0, Number.POSITIVE_INFINITY];
  const hair = 1e-9 * Math.max(1, Math.abs(least), Number.isFinite(most) ? Math.abs(most) : 0);
  if (quantity.low >= least - hair && quantity.high <= most + hair) return null;
  const say = (value: number): string => context.say(spec.kind as Kind, value, spec.as);
  const shown = shownOf(given, spec, context);
  if (!Number.isFinite(most))
    return `The ${spec.title} of ${shown} is below ${say(least)}, the least for which this relation holds.`;
  return `The ${spec.title} of ${shown} lies outside ${say(least)} to ${say(most)}, for which this relation holds.`;
};

/** That a refrigerant has no table, and which was most likely meant. */
function noTable(name: string): string {
  const meant = meantRefrigerant(name);
  const such = meant !== undefined && meant !== name && refrigerantNamed(meant) ? `; perhaps ${meant} is meant` : '';
  return `There is no property table for ${name}${whyLeftOut(name) === undefined ? such : ''}.`;
}

const bindOne = (spec: InputSpec, given: Given, context: Context): Bound | { readonly refused: string } => {
  if (spec.kind === 'refrigerant') {
    const found = refrigerantNamed(given.shown);
    return found ?? { refused: noTable(given.shown) };
  }
  if (isNamed(spec.kind)) return given.shown;
  const quantity = given.quantity!;
  if (quantity.kind !== spec.kind)
    return {
      refused: `The ${spec.title} is given as ${kindInWords(quantity.kind)}; ${kindInWords(spec.kind as Kind)} belongs here.`,
    };
  const refused = outside(spec, quantity, given, context);
  return refused === null ? quantity : { refused };
};

const isRefusal = (bound: unknown): bound is { readonly refused: string } =>
  typeof bound === 'object' && bound !== null && 'refused' in bound;

const absent = (spec: InputSpec, given: Given | undefined): boolean =>
  given === undefined || (given.quantity === null && (!isNamed(spec.kind) || given.shown === ''));

/** A default at or above the atmosphere is a gauge reading, which counts from the atmosphere of the site. */
const onSite = (quantity: Quantity, atmosphere: number): Quantity =>
  quantity.kind === 'pressure' && quantity.low >= standardAtmosphere
    ? between(
        'pressure',
        quantity.low - standardAtmosphere + atmosphere,
        quantity.high - standardAtmosphere + atmosphere,
      )
    : quantity;

/** Puts what was given, the defaults and what is missing in one place; nothing is taken silently. */
export const resolve = (
  specs: InputSpecs,
  given: Readonly<Record<string, Given | readonly Given[] | undefined>>,
  context: Context,
): Resolved => {
  const inputs: Record<string, Input> = {};
  const values: Record<string, Bound | readonly Bound[]> = {};
  const missing = new Set<string>();
  const refusals: string[] = [];
  const notes: string[] = [];
  const sources: string[] = [];
  const confidences: Confidence[] = [];
  const trust = new Set<string>();
  const trustBefore = new Set<string>();

  const take = (key: string, spec: InputSpec, one: Given): Bound => {
    inputs[key] = {
      quantity: one.quantity,
      get shown() {
        return shownOf(one, spec, context);
      },
      from: one.from,
    };
    if (one.confidence !== undefined) confidences.push(one.confidence);
    for (const word of one.trust ?? []) {
      trust.add(word);
      trustBefore.add(word);
    }
    const bound = bindOne(spec, one, context);
    if (spec.kind === 'refrigerant' && spec.byNameAlone !== true && !isRefusal(bound)) {
      const word = trustWord(bound as Refrigerant);
      if (word !== null) trust.add(word);
    }
    if (!isRefusal(bound)) return bound;
    refusals.push(bound.refused);
    return undefined;
  };

  const lack = (spec: InputSpec, one: Given | undefined): void => {
    for (const line of one?.missing ?? [spec.from]) missing.add(line);
    refusals.push(...(one?.refused ?? []));
  };

  for (const [key, spec] of Object.entries(specs)) {
    const handed = given[key];
    if (spec.several === true) {
      const list = handed === undefined ? [] : 'shown' in handed ? [handed] : handed;
      if (list.length === 0 && spec.optional !== true) missing.add(spec.from);
      for (const one of list) if (absent(spec, one)) lack(spec, one);
      values[key] = list
        .filter((one) => !absent(spec, one))
        .map((one, index) => take(`${key} ${index + 1}`, spec, one));
      continue;
    }
    const one = Array.isArray(handed) ? (handed as readonly Given[])[0] : (handed as Given | undefined);
    if (!absent(spec, one)) values[key] = take(key, spec, one!);
    else if (spec.default !== undefined && one?.missing === undefined) {
      const { source, confidence } = spec.default;
      const quantity = onSite(spec.default.quantity, context.atmosphere);
      const shown = context.tell(quantity, spec.as);
      inputs[key] = { quantity, shown, from: 'default', source };
      values[key] = quantity;
      notes.push(`The ${spec.title} is not stated; ${shown} is taken (${source}).`);
      confidences.push(confidence);
    } else if (spec.optional === true && one?.missing === undefined) values[key] = undefined;
    else lack(spec, one);
  }
  return {
    inputs,
    values,
    missing: [...missing],
    refusals,
    notes,
    sources,
    confidences,
    trust: [...trust],
    trustBefore: [...trustBefore],
  };
};

const isRange = (bound: unknown): bound is Quantity =>
  typeof bound === 'object' && bound !== null && 'kind' in bound && 'low' in bound && 'high' in bound;

/** More ranged inputs than this are taken at their ends together: 2^10 corners are the most that are worked through. */
const mostRanged = 10;

/**
 * Every combination of the ends of ranged values, as plain numbers. A relation that is monotone in each input has its
 * least and its most among them.
 */
export function* corners(values: Resolved['values']): Generator<Record<string, unknown>> {
  const ranged: Quantity[] = [];
  const visit = (bound: unknown): void => {
    if (Array.isArray(bound)) bound.forEach(visit);
    else if (isRange(bound) && bound.low !== bound.high) ranged.push(bound);
  };
  Object.values(values).forEach(visit);
  const free = Math.min(ranged.length, mostRanged);
  for (let corner = 0; corner < 2 ** free; corner++) {
    let index = 0;
    const pick = (bound: unknown): unknown => {
      if (Array.isArray(bound)) return bound.map(pick);
      if (!isRange(bound)) return bound;
      if (bound.low === bound.high) return bound.low;
      const bit = Math.min(index++, free - 1);
      return (corner >> bit) & 1 ? bound.high : bound.low;
    };
    yield Object.fromEntries(Object.entries(values).map(([key, bound]) => [key, pick(bound)]));
  }
}
