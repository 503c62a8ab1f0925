import type { Token } from '../../../grammar/tree';
import type { Kind, Literal } from '../quantity';
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
  /** What usually stands in a term that takes any words; others may. */
  readonly usual?: readonly string[];
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

export const end = (token: Token): number => token.at + token.text.length;
export const fault = (
  name: string,
  message: string,
  token: Token | undefined,
  instead: readonly string[] = [],
): { fault: TermFault } => ({
  fault: { name, message, from: token?.at ?? -1, to: token ? end(token) : -1, instead },
});

/** A term that was expected and is not what stands there. */
export function expected(shape: string, token: Token | undefined, example?: string): { fault: TermFault } {
  const such = example ? `, such as ${example}` : '';
  return token
    ? fault('wrong-term', `Expected ${shape}${such}, not "${shortened(token.text)}".`, token)
    : fault('missing-term', `Expected ${shape}${such}.`, token);
}
