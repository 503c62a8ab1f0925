/** What the drawing is made from: the circuit in flow order, which closes on itself. */
export type Series = readonly Piece[];
export type Piece = DrawnPart | DrawnParallel | DrawnThrough;

export type PartState = 'kept' | 'new' | 'removed' | 'reused' | 'added';

/** How a part is drawn. Whatever has no sign of its own is a plain box. */
export type Sign =
  | 'line'
  | 'valve'
  | 'driven-valve'
  | 'expansion-valve'
  | 'compressor'
  | 'coil'
  | 'vessel'
  | 'drier'
  | 'sight-glass'
  | 'box';

/** What stands at an end of a part. `inlet` and `outlet` follow the flow in which the parts are listed. */
export interface Mark {
  readonly at: 'inlet' | 'outlet';
  readonly what: 'near' | 'far' | 'solvent-in' | 'solvent-out' | 'open' | 'capped';
}

/** Patterns for what a part holds, told apart on a copy; their meaning is given in the legend. */
export type FillPattern = 'hatch' | 'back-hatch' | 'cross-hatch' | 'dots' | 'level';

export interface DrawnPart {
  readonly kind: 'part';
  readonly name: string;
  readonly sign: Sign;
  /** "3/8 in, 48 ft"; null where the plan gives none. */
  readonly size: string | null;
  readonly state: PartState;
  /** Must not be flushed: a crossed box stands at its name. */
  readonly neverFlush: boolean;
  readonly shut: boolean;
  readonly marks: readonly Mark[];
  /** A small line of its own under the size, and what the part is filled with. */
  readonly caption: string | null;
  readonly fill: FillPattern | null;
}

export interface DrawnParallel {
  readonly kind: 'parallel';
  readonly branches: readonly { readonly name: string; readonly series: Series }[];
}

/** The flow meets a part again. */
export interface DrawnThrough {
  readonly kind: 'through';
  readonly name: string;
}

export interface Graph {
  readonly series: Series;
  /** The meaning of each pattern in use, for the legend. */
  readonly patterns: Partial<Readonly<Record<FillPattern, string>>>;
}

export const drawnPart = (name: string, sign: Sign, more: Partial<Omit<DrawnPart, 'kind'>> = {}): DrawnPart => ({
  kind: 'part',
  name,
  sign,
  size: null,
  state: 'kept',
  neverFlush: false,
  shut: false,
  marks: [],
  caption: null,
  fill: null,
  ...more,
});

const signs: Readonly<Record<string, Sign>> = {
  compressor: 'compressor',
  condenser: 'coil',
  evaporator: 'coil',
  'coaxial-coil': 'coil',
  receiver: 'vessel',
  accumulator: 'vessel',
  'oil-separator': 'vessel',
  muffler: 'vessel',
  'filter-drier': 'drier',
  strainer: 'drier',
  'sight-glass': 'sight-glass',
  'expansion-valve': 'expansion-valve',
  'electronic-expansion-valve': 'expansion-valve',
  'cap-tube': 'expansion-valve',
  'fixed-orifice': 'expansion-valve',
  solenoid: 'driven-valve',
  'evaporator-pressure-regulator': 'driven-valve',
  'service-valve': 'valve',
  'ball-valve': 'valve',
  'check-valve': 'valve',
};

/** The sign for a kind of part, by its word in the plan. */
export function signOf(kind: string): Sign {
  if (kind.endsWith('-line')) return 'line';
  return Object.hasOwn(signs, kind) ? signs[kind]! : 'box';
}
