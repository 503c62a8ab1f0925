import type { Kind, Quantity } from '../quantity';
import type { Fact } from '../reference/fact';
import type { InputKind } from './given';

/** One input of a relation: what it is, and which line of the plan gives it. */
export interface InputSpec {
  readonly kind: InputKind;
  /** In a sentence: "bore". */
  readonly title: string;
  /** The unit in which the trade reads it, where the usual one of its kind is not it. */
  readonly as?: string;
  /** The line of a plan that would give it. */
  readonly from: string;
  /** Taken, and said to be taken, when the input is not given. */
  readonly default?: Fact;
  /** May be absent without a default; `compute` sees undefined. */
  readonly optional?: true;
  /** Least and most in SI for which the relation holds; nothing below zero unless said. */
  readonly valid?: readonly [number, number];
  /** A refrigerant that is looked up in lists of law and safety alone: no property table is asked. */
  readonly byNameAlone?: true;
  /** Takes a list. */
  readonly several?: true;
}

export type InputSpecs = Readonly<Record<string, InputSpec>>;

/** How the workings of a relation speak of values. */
export interface Context {
  /** A value in SI as it stands in the workings, in the system of the sheet. */
  readonly say: (kind: Kind, value: number, as?: string) => string;
  /** The same of a quantity that may be a range. */
  readonly tell: (quantity: Quantity, as?: string) => string;
  /** A temperature counted from absolute zero, as gas laws want it: `540.7 °R` or `300.4 K`. */
  readonly absolute: (kelvin: number) => string;
  /** The system in which the workings are written. */
  readonly system: 'inch-pound' | 'si';
  /** Pressure of the site's atmosphere, Pa: ratings and readings are by gauge. */
  readonly atmosphere: number;
}
