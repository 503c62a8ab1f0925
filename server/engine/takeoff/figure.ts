import type { Kind, Quantity } from '../quantity/quantity';

/** How sure a figure is: the weakest of what it rests on. */
export type Confidence = 'published' | 'computed' | 'practice' | 'memory';

export interface Input {
  readonly quantity: Quantity | null;
  /** As read: "3/8 in ACR", "R-454B". */
  readonly shown: string;
  readonly from: 'plan' | 'computed' | 'default' | 'reference';
  /** Of a default: what it rests on. */
  readonly source?: string;
}

/** A computed result with its workings: the same object feeds the hint, the hover, the command line and the sheet. */
export interface Figure {
  /** The relation's name, kebab-case: `line-volume`. */
  readonly name: string;
  /** What it is a figure of: a part, a line, the job. */
  readonly subject: string;
  readonly kind: Kind;
  /** Null when an input is missing. */
  readonly quantity: Quantity | null;
  readonly inputs: Readonly<Record<string, Input>>;
  readonly formula: string;
  /** The calculation with numbers in it, line by line, so that it can be followed by hand. */
  readonly workings: readonly string[];
  readonly sources: readonly string[];
  readonly confidence: Confidence;
  /** For each missing input, the line of the plan that would give it. */
  readonly missing: readonly string[];
  /** Notes a reader must see: a default taken, a model's limit. */
  readonly notes: readonly string[];
  /** Those of the notes that tell a default taken: where many figures stand together, each is told once. */
  readonly defaults: readonly string[];
  /** Those of the notes that tell how far property tables are to be trusted that it, or a figure before it, rests on. */
  readonly trust?: readonly string[];
}
