import {
  exactly,
  isProblem,
  type Kind,
  type LiteralProblem,
  type Quantity,
  readLiteral,
  show,
  standardAtmosphere,
  toQuantity,
} from '../quantity';
import type { Confidence, Figure, Input } from './figure';

/** What an input of a relation can be: a quantity, or something that has a name. */
export type InputKind = Kind | 'refrigerant' | 'word' | 'date';

/** An input as a caller hands it over; what a figure further up lacks, and how sure it is, goes on with it. */
export interface Given extends Input {
  /** Whether `shown` is somebody's own text; what is not is put into words in the units and at the atmosphere of the figure. */
  readonly said?: true;
  /** What it is the value of, where the input alone does not tell: stands in brackets behind it. */
  readonly of?: string;
  readonly missing?: readonly string[];
  /** Why a figure further up is none, where nothing is missing for it. */
  readonly refused?: readonly string[];
  readonly confidence?: Confidence;
  /** How far the property tables behind it are to be trusted, in sentences. */
  readonly trust?: readonly string[];
}

/** A quantity as an input: `input(bore, 'reference', '3/8 in ACR')`. */
export const input = (quantity: Quantity, from: Input['from'] = 'plan', shown?: string, of?: string): Given =>
  shown === undefined
    ? {
        quantity,
        ...(of !== undefined && { of }),
        // Most inputs are never read by anybody: they are put into words when they are.
        get shown() {
          return show(quantity);
        },
        from,
      }
    : { quantity, shown, from, said: true };

/** A refrigerant, a word or an ISO date as an input. */
export const named = (name: string, from: Input['from'] = 'plan'): Given => ({ quantity: null, shown: name, from });

/** A figure as the input of the next one; what it lacks, the next one lacks, and where it does not hold, neither does that. */
export const computed = (figure: Figure, shown?: string): Given => ({
  quantity: figure.quantity,
  get shown() {
    return shown ?? (figure.quantity === null ? 'not known' : show(figure.quantity));
  },
  from: 'computed',
  ...(shown !== undefined && { said: true as const }),
  confidence: figure.confidence,
  ...(figure.trust !== undefined && { trust: figure.trust }),
  ...(figure.quantity === null &&
    (figure.missing.length > 0
      ? { missing: figure.missing }
      : { missing: [], refused: figure.notes.filter((note) => !figure.defaults.includes(note)) })),
});

/** Reads `50 ft`, `R-22`, `3` or `2027-05-18` as an input of a kind, as the command line and the examples write it. */
export const readGiven = (
  kind: InputKind,
  text: string,
  atmosphere: number = standardAtmosphere,
): Given | LiteralProblem => {
  if (kind === 'refrigerant' || kind === 'word' || kind === 'date') return named(text.trim());
  if (kind === 'count') {
    const value = text.trim() === '' ? Number.NaN : Number(text);
    return Number.isFinite(value)
      ? input(exactly('count', value), 'plan', text)
      : { problem: 'not-a-number', message: `\`${text}\` is no number.`, suggestions: [] };
  }
  const literal = readLiteral(text);
  if (isProblem(literal)) return literal;
  const quantity = toQuantity(literal, kind, atmosphere);
  return isProblem(quantity) ? quantity : input(quantity, 'plan', text);
};
