import type { Token } from '../../../grammar/tree';
import {
  isProblem,
  type Kind,
  kindInWords,
  type Literal,
  nearest,
  readLiteral,
  standardAtmosphere,
  toQuantity,
} from '../quantity';
import { shortened } from './shortened';

/** What is wrong with a term, at a range within its statement. */
export interface TermFault {
  readonly name: string;
  readonly message: string;
  readonly from: number;
  readonly to: number;
  /** Whole replacements of the range, the best first. */
  readonly instead: readonly string[];
}

/** Reads one statement's terms; `stops` says where a clause begins, so that lists and selections end there. */
export class Cursor {
  index = 0;
  constructor(
    readonly tokens: readonly Token[],
    readonly stops: (index: number) => boolean,
  ) {}

  peek(ahead = 0): Token | undefined {
    return this.tokens[this.index + ahead];
  }
  next(): Token | undefined {
    return this.tokens[this.index++];
  }
  get done(): boolean {
    return this.index >= this.tokens.length;
  }
  get atStop(): boolean {
    return this.done || this.stops(this.index);
  }
}

export type Reading<T> = { readonly value: T } | { readonly fault: TermFault };

export interface Term<T = unknown> {
  /** How a form shows it: PRESSURE, NAME. */
  readonly shape: string;
  readonly type: 'quantity' | 'number' | 'choice' | 'name' | 'text' | 'date' | 'time' | 'selection';
  readonly kind?: Kind;
  readonly choices?: readonly string[];
  readonly refers?: Reference;
  readonly example?: string;
  /** A selection that takes any thing, not only parts and its own nouns. */
  readonly free?: boolean;
  starts(token: Token): boolean;
  read(cursor: Cursor): Reading<T>;
}

/** What a name in a statement may refer to. */
export type Reference =
  | 'part'
  | 'place-in-circuit'
  | 'label'
  | 'standard'
  | 'house-rules'
  | 'plan'
  | 'solvent'
  | 'nitrogen-cylinder'
  | 'recovery-cylinder'
  | 'recovery-machine'
  | 'pump'
  | 'hose'
  | 'regulator'
  | 'refrigerant'
  | 'oil'
  | 'tube'
  | 'check'
  | 'stock'
  | 'parameter'
  | 'file';

/** A name as written. */
export interface Name {
  readonly text: string;
  readonly refers: Reference;
  readonly from: number;
  readonly to: number;
}

/** A number with its unit, as written; a quantity once the site's atmosphere is known. */
export interface Amount {
  readonly literal: Literal;
  readonly kind: Kind;
  readonly from: number;
  readonly to: number;
}

const end = (token: Token): number => token.at + token.text.length;
const fault = (
  name: string,
  message: string,
  token: Token | undefined,
  instead: readonly string[] = [],
): { fault: TermFault } => ({
  fault: { name, message, from: token?.at ?? -1, to: token ? end(token) : -1, instead },
});

/** A term that was expected and is not what stands there. */
function expected(shape: string, token: Token | undefined, example?: string): { fault: TermFault } {
  const such = example ? `, such as ${example}` : '';
  return token
    ? fault('wrong-term', `Expected ${shape}${such}, not "${shortened(token.text)}".`, token)
    : fault('missing-term', `Expected ${shape}${such}.`, token);
}

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

/** More than this of anything that a job counts one by one is a slip of the hand. */
const mostCounted = 1000;

/** A bare whole number: how many, how often, a revision. */
export function count({ least = 0, most = mostCounted } = {}): Term<number> {
  return {
    shape: 'number',
    type: 'number',
    example: '3',
    starts: (token) => token.kind === 'number',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'number') return expected('a number', token, '3');
      cursor.next();
      const value = /^\d+$/.test(token.text) ? Number(token.text) : Number.NaN;
      if (value >= least && value <= most) return { value };
      return fault(
        'impossible',
        `"${shortened(token.text)}" cannot stand here: a whole number${most > mostCounted ? '' : ` from ${least} to ${most}`} belongs here.`,
        token,
      );
    },
  };
}

/** How often something is done: rounds of a repeat, ways back after a failed test. */
export const rounds = (): Term<number> => count({ least: 1, most: 100 });

/** One of a few words; several words may make one choice ("long-radius"). */
export function choice<const C extends readonly string[]>(...choices: C): Term<C[number]> {
  return {
    shape: choices.length > 4 ? `${choices.slice(0, 4).join(' | ')} | …` : choices.join(' | '),
    type: 'choice',
    choices,
    starts: (token) => token.kind === 'word' && choices.some((each) => each.split(' ')[0] === token.text),
    read(cursor) {
      const longest = [...choices].sort((a, b) => b.length - a.length);
      for (const each of longest) {
        const words = each.split(' ');
        if (words.every((word, k) => cursor.peek(k)?.text === word)) {
          cursor.index += words.length;
          return { value: each };
        }
      }
      const token = cursor.peek();
      if (!token) return expected(`one of ${choices.join(', ')}`, token);
      cursor.next();
      const near = nearest(token.text, choices);
      return fault(
        'wrong-term',
        `"${shortened(token.text)}" cannot stand here; ${near ? `the nearest is "${near}"` : `it takes one of ${choices.join(', ')}`}.`,
        token,
        near ? [near] : [],
      );
    },
  };
}

/** A name of something declared elsewhere; found, or not, when the plan is put together. */
export function name(refers: Reference): Term<Name> {
  return {
    shape: refers.toUpperCase(),
    type: 'name',
    refers,
    starts: (token) => token.kind === 'word',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'word') return expected(`the name of a ${refers.replaceAll('-', ' ')}`, token);
      cursor.next();
      return { value: { text: token.text, refers, from: token.at, to: end(token) } };
    },
  };
}

/** A text in quotes, given without them. */
export function text(): Term<string> {
  return {
    shape: '"TEXT"',
    type: 'text',
    example: '"maker\'s sheet, page 4"',
    starts: (token) => token.kind === 'string',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'string') return expected('a text in quotes', token);
      cursor.next();
      return { value: token.text.replace(/^"/, '').replace(/"$/, '') };
    },
  };
}

/** A day, `2027-05-18`, or a month, `2029-06`. */
export function date(): Term<string> {
  return {
    shape: 'DATE',
    type: 'date',
    example: '2027-05-18',
    starts: (token) => token.kind === 'date',
    read(cursor) {
      const token = cursor.peek();
      // A year alone is a number to the parser; where a date is meant it is a year.
      if (token?.kind === 'number' && /^\d{4}$/.test(token.text)) {
        cursor.next();
        return { value: token.text };
      }
      if (token?.kind !== 'date') return expected('a date', token, '2027-05-18');
      cursor.next();
      const [year, month, day] = token.text.split('-').map(Number) as [number, number, number | undefined];
      const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
      if (month < 1 || month > 12 || (day !== undefined && (day < 1 || day > days))) {
        return fault('impossible', `There is no day ${token.text} in the calendar.`, token);
      }
      return { value: token.text };
    },
  };
}

/** A time of day, `08:05`. */
export function clock(): Term<string> {
  return {
    shape: 'TIME',
    type: 'time',
    example: '08:05',
    starts: (token) => token.kind === 'time',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'time') return expected('a time of day', token, '08:05');
      cursor.next();
      const [hour, minute] = token.text.split(':').map(Number) as [number, number];
      if (hour > 23 || minute > 59) return fault('impossible', `There is no time of day ${token.text}.`, token);
      return { value: token.text };
    },
  };
}

/** Several of the same, separated by commas, up to the next clause. */
export function list<T>(term: Term<T>): Term<readonly T[]> {
  return {
    ...term,
    shape: `${term.shape}, …`,
    read(cursor) {
      const values: T[] = [];
      for (;;) {
        const reading = term.read(cursor);
        if ('fault' in reading) return reading;
        values.push(reading.value);
        const following = cursor.peek(1);
        if (cursor.peek()?.kind !== 'comma' || !following || cursor.stops(cursor.index + 1) || !term.starts(following))
          break;
        cursor.next();
      }
      return { value: values };
    },
  };
}

/** The first of several terms that can begin with the token that stands there. */
export function either<A, B>(a: Term<A>, b: Term<B>): Term<A | B> {
  const choices = [...(a.choices ?? []), ...(b.choices ?? [])];
  const refers = a.refers ?? b.refers;
  return {
    shape: `${a.shape} | ${b.shape}`,
    type: a.type,
    ...((a.kind ?? b.kind) ? { kind: (a.kind ?? b.kind)! } : {}),
    ...(choices.length ? { choices } : {}),
    ...(refers ? { refers } : {}),
    starts: (token) => a.starts(token) || b.starts(token),
    read(cursor): Reading<A | B> {
      const token = cursor.peek();
      return token && !a.starts(token) && b.starts(token) ? b.read(cursor) : a.read(cursor);
    },
  };
}

/** Two terms, one behind the other, the second optional: `600 psig for 24 h` has clauses, `95 lb R-22` this. */
export function pair<A, B>(a: Term<A>, b: Term<B>): Term<{ readonly a: A; readonly b?: B }> {
  return {
    ...a,
    shape: `${a.shape} [${b.shape}]`,
    read(cursor): Reading<{ a: A; b?: B }> {
      const one = a.read(cursor);
      if ('fault' in one) return one;
      const token = cursor.peek();
      if (!token || cursor.atStop || !b.starts(token)) return { value: { a: one.value } };
      const two = b.read(cursor);
      return 'fault' in two ? two : { value: { a: one.value, b: two.value } };
    },
  };
}

/** Any word or words up to the next comma or clause: a thing that only people know (`door-alarms`, `new-gaskets`). */
export function thing(shape = 'THING'): Term<string> {
  return {
    shape,
    type: 'choice',
    starts: (token) => token.kind === 'word',
    read(cursor) {
      const words: string[] = [];
      if (cursor.peek()?.kind !== 'word') return expected('a word or two', cursor.peek());
      do words.push(cursor.next()!.text);
      while (!cursor.atStop && cursor.peek()?.kind === 'word');
      return { value: words.join(' ') };
    },
  };
}
