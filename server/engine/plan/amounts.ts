import type { Token } from '../../../grammar/tree';
import { isProblem, type Kind, kindInWords, readLiteral, standardAtmosphere, toQuantity } from '../quantity';
import { shortened } from './shortened';
import { type Amount, type Cursor, end, expected, type Reading, type Term } from './term';

const examples: Partial<Record<Kind, string>> = {
  pressure: '100 psig',
  'pressure-difference': '300 micron',
  time: '30 s',
  length: '48 ft',
  mass: '6 lb 2 oz',
  volume: '54 fl-oz',
  temperature: '88 degF',
  'temperature-difference': '8 Δ°F',
  share: '15 %',
  'volume-flow': '5 cfh',
  power: '36000 Btu/h',
  density: '1.25 kg/L',
  'acid-number': '0.05 mgKOH/g',
  'mass-per-length': '0.6 oz/ft',
  altitude: '640 ft',
  torque: '15 ft-lb',
  velocity: '1500 ft/min',
};

/**
 * More than this of anything, in SI, is a slip of the hand and no figure of a job: ten kilometres of line, ten thousand cubic
 * metres of gas a second. What a place bears is far less; see `bounded`.
 */
const outOfProportion: Partial<Record<Kind, number>> = {
  length: 1e4,
  altitude: 1e4,
  area: 1e6,
  volume: 1e7,
  mass: 1e6,
  time: 3.2e9,
  temperature: 3000,
  'temperature-difference': 3000,
  pressure: 1e9,
  'pressure-difference': 1e9,
  'volume-flow': 1e4,
  'mass-flow': 1e5,
  velocity: 1e4,
  density: 1e5,
  'mass-per-length': 1e4,
  power: 1e9,
  share: 1e3,
  'acid-number': 1e4,
  torque: 1e6,
};

/** `1,500` and `1e3` come as several tokens; what belongs together by standing together is read, and mended, as one. */
function wholeNumber(cursor: Cursor, token: Token): { readonly text: string; readonly to: number } {
  let text = token.text;
  let to = end(token);
  const adjacent = (next: Token | undefined): next is Token => next !== undefined && next.at === to;
  for (;;) {
    const [comma, digits] = [cursor.peek(), cursor.peek(1)];
    const joins = /\d$/.test(text) && adjacent(comma) && comma.kind === 'comma' && digits?.at === end(comma);
    if (!joins || (digits.kind !== 'number' && digits.kind !== 'quantity')) break;
    text += comma.text + digits.text;
    to = end(digits);
    cursor.next();
    cursor.next();
  }
  const exponent = cursor.peek();
  if (/\d$/.test(text) && adjacent(exponent) && /^[eE]\d+$/.test(exponent.text)) {
    text += exponent.text;
    to = end(exponent);
    cursor.next();
  }
  // A number with something behind it that is no unit: most likely a misspelt one.
  const bare = /\d$/.test(text) && !/[a-zµ°%][23]$/i.test(text.replace(/[eE]\d+$/, ''));
  const following = cursor.peek();
  if (bare && following?.kind === 'word' && !cursor.stops(cursor.index)) {
    text = `${text} ${following.text}`;
    to = end(following);
    cursor.next();
  }
  return { text, to };
}

/** A quantity of one kind (or of the first kind that fits). */
export function quantity(...kinds: readonly [Kind, ...Kind[]]): Term<Amount> {
  const shape = kinds.join(' or ').replaceAll('-', ' ');
  const example = examples[kinds[0]];
  return {
    shape,
    type: 'quantity',
    kind: kinds[0],
    ...(example ? { example } : {}),
    starts: (token) => token.kind === 'quantity' || token.kind === 'number',
    read(cursor) {
      const token = cursor.peek();
      if (!token || (token.kind !== 'quantity' && token.kind !== 'number')) return expected(shape, token, example);
      cursor.next();
      const { text, to } = wholeNumber(cursor, token);
      const literal = readLiteral(text);
      if (isProblem(literal)) {
        return {
          fault: { name: literal.problem, message: literal.message, from: token.at, to, instead: literal.suggestions },
        };
      }
      let problem: ReturnType<typeof toQuantity> | undefined;
      for (const kind of kinds) {
        const tried = toQuantity(literal, kind, standardAtmosphere);
        if (!isProblem(tried)) {
          const most = outOfProportion[kind] ?? Number.POSITIVE_INFINITY;
          if (Math.abs(tried.low) <= most && Math.abs(tried.high) <= most)
            return { value: { literal, kind, from: token.at, to } };
          const message = `\`${shortened(text)}\` is out of all proportion: ${kindInWords(kind)} on a job is never so large.`;
          return { fault: { name: 'impossible', message, from: token.at, to, instead: [] } };
        }
        problem ??= tried;
      }
      if (problem && isProblem(problem)) {
        return {
          fault: { name: problem.problem, message: problem.message, from: token.at, to, instead: problem.suggestions },
        };
      }
      return expected(shape, token, example);
    },
  };
}

/**
 * A level of vacuum as a pump reaches it. Gauges for it count from nothing, so that `50 Pa` and `0.5 mmHg`, which elsewhere do
 * not say what they count from, can only be meant absolute; the text stays as its author wrote it.
 */
export function vacuumLevel(): Term<Amount> {
  const term = quantity('pressure');
  return {
    ...term,
    read(cursor) {
      const reading = term.read(cursor);
      if (!('fault' in reading)) return reading;
      const { name, from, to, instead } = reading.fault;
      const meant = instead.find((text) =>
        name === 'ambiguous-reference'
          ? / (absolute|psia)$/.test(text)
          : name === 'unknown-unit' && / torr$/.test(text),
      );
      const literal = meant === undefined ? null : readLiteral(meant);
      if (literal === null || isProblem(literal) || isProblem(toQuantity(literal, 'pressure', standardAtmosphere)))
        return reading;
      const written = cursor.tokens.filter((token) => from <= token.at && end(token) <= to);
      const text = written.map((token) => token.text).join(' ');
      return { value: { literal: { ...literal, text }, kind: 'pressure', from, to } };
    },
  };
}

/** What a figure in a place must keep, written as a plan would: more than `over`, from `least` to `most`. */
export interface Bounds {
  readonly over?: string;
  readonly least?: string;
  readonly most?: string;
}

/** A quantity of which only so much can be: a tube of no bore, a room without air and a town at 40,000 ft are slips. */
export function bounded(term: Term<Amount>, bounds: Bounds): Term<Amount> {
  const known = new Map<string, number | null>();
  const inSI = (text: string | undefined, kind: Kind): number | null => {
    if (text === undefined) return null;
    let value = known.get(`${text} ${kind}`);
    if (value === undefined) {
      const literal = readLiteral(text);
      const found = isProblem(literal) ? literal : toQuantity(literal, kind, standardAtmosphere);
      value = isProblem(found) ? null : found.low;
      known.set(`${text} ${kind}`, value);
    }
    return value;
  };
  return {
    ...term,
    read(cursor) {
      const reading = term.read(cursor);
      if ('fault' in reading) return reading;
      const { literal, kind, from, to } = reading.value;
      const found = toQuantity(literal, kind, standardAtmosphere);
      if (isProblem(found)) return reading;
      const [over, least, most] = [bounds.over, bounds.least, bounds.most].map((text) => inSI(text, kind));
      const text = literal.text.trim();
      const impossible = (message: string): Reading<Amount> => ({
        fault: { name: 'impossible', message, from, to, instead: [] },
      });
      if (over != null && found.low <= over + Math.abs(over) * 1e-9)
        return impossible(`\`${text}\` cannot be: ${kindInWords(kind)} above ${bounds.over} belongs here.`);
      if (least != null && found.low < least - 1e-9)
        return impossible(`\`${text}\` cannot be: at least ${bounds.least} belongs here.`);
      if (most != null && found.high > most + 1e-9)
        return impossible(`\`${text}\` cannot be: at most ${bounds.most} belongs here.`);
      return reading;
    },
  };
}
