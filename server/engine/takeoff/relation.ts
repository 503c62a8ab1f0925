import type { Refrigerant } from '../properties';
import { exactly, type Kind, type Quantity, show, standardAtmosphere } from '../quantity';
import { weakest } from '../reference/source';
import { pound } from '../reference/table-units';
import { corners, resolve } from './bind';
import type { Confidence, Figure } from './figure';
import type { Given } from './given';
import { canSpeak } from './in-system';
import type { Context, InputSpec, InputSpecs } from './spec';

type One<S extends InputSpec> = S['kind'] extends 'refrigerant'
  ? Refrigerant
  : S['kind'] extends 'word' | 'date'
    ? string
    : number;

/** What `compute` sees: SI numbers, refrigerants and words, undefined only where the input is optional. */
export type Values<I extends InputSpecs> = {
  readonly [K in keyof I]: I[K] extends { several: true }
    ? readonly One<I[K]>[]
    : I[K] extends { optional: true }
      ? One<I[K]> | undefined
      : One<I[K]>;
};

export interface Outcome {
  /** In SI; a pair where the relation itself gives a range. */
  readonly value: number | readonly [low: number, high: number];
  readonly workings: () => readonly string[];
  readonly notes?: readonly string[];
  readonly confidence?: Confidence;
  /** Set where the figure is a row of a list after all, and no property table stands behind it. */
  readonly withoutTables?: true;
}

/** Why there is no figure, as a sentence. */
export interface Refusal {
  readonly refused: string;
}

/** A check of the relation against the world: inputs and result as text, with the source of the expectation. */
export interface Example {
  readonly inputs: Readonly<Record<string, string | readonly string[]>>;
  readonly expect: string;
  /** Relative tolerance. */
  readonly tolerance: number;
  readonly source: string;
}

export interface Definition<I extends InputSpecs> {
  readonly name: string;
  readonly title: string;
  /** Number of the group in the list of what the engine computes. */
  readonly group: number;
  readonly inputs: I;
  readonly output: Kind;
  /** Unit in which people read the result, where the usual one of its kind is not it. */
  readonly outputUnit?: string;
  /** Digits in which a bare number is shown, where it is no whole one. */
  readonly outputDigits?: number;
  readonly formula: string;
  readonly validity: string;
  readonly sources: readonly string[];
  readonly confidence: Confidence;
  readonly assumptions: readonly string[];
  readonly examples: readonly Example[];
  /** Monotone in each number, so that the ends of ranged inputs give the ends of the result. */
  readonly compute: (values: Values<I>, context: Context) => Outcome | Refusal;
}

export interface FigureOptions {
  readonly system?: 'inch-pound' | 'si' | 'both';
  readonly atmosphere?: number;
}

export type GivenInputs<I extends InputSpecs> = {
  readonly [K in keyof I]?: (I[K] extends { several: true } ? readonly Given[] : Given) | undefined;
};

/** A relation as the registry, the command line and the manual see it. */
export interface AnyRelation extends Omit<Definition<InputSpecs>, 'compute'> {
  readonly figure: (
    subject: string,
    given: Readonly<Record<string, Given | readonly Given[] | undefined>>,
    options?: FigureOptions,
  ) => Figure;
}

export interface Relation<I extends InputSpecs> extends Omit<Definition<I>, 'compute'> {
  /** The figure of `subject`: null with what is missing, or with a note where the relation does not hold. Never throws. */
  readonly figure: (subject: string, given: GivenInputs<I>, options?: FigureOptions) => Figure;
}

/** Pounds with decimals, or ounces: pounds and whole ounces are too coarse to follow a calculation. */
const weightUnit = (kilograms: number): string => (Math.abs(kilograms) < pound ? 'oz' : 'lb');

/** Nothing has no size to choose a unit by. */
const ofNothing: Partial<Record<Kind, string>> = { share: '%', 'pressure-difference': 'psi', time: 'min' };

const contextOf = (options: FigureOptions): Context => {
  const atmosphere = options.atmosphere ?? standardAtmosphere;
  const system = options.system ?? 'inch-pound';
  const tell = (quantity: Quantity, as?: string): string => {
    const { kind, high } = quantity;
    const usual = kind === 'mass' ? weightUnit(high) : high === 0 ? ofNothing[kind] : undefined;
    const unit = system === 'si' && kind !== 'share' ? undefined : (as ?? usual);
    // A gas law counts from absolute zero of pressure in either system.
    const level = system === 'si' && (as === 'psia' || as === 'kPa absolute') ? ({ level: 'absolute' } as const) : {};
    return show(quantity, { system, atmosphere, digits: 4, ...level, ...(unit !== undefined && { as: unit }) });
  };
  return {
    atmosphere,
    system: system === 'si' ? 'si' : 'inch-pound',
    tell,
    absolute: (kelvin) => (system === 'si' ? `${kelvin.toFixed(1)} K` : `${(kelvin * 1.8).toFixed(1)} °R`),
    say: (kind, value, as) => tell(exactly(kind, value), as),
  };
};

const lazily = (make: () => readonly string[]): (() => readonly string[]) => {
  let made: readonly string[] | undefined;
  return () => {
    made ??= make();
    return made;
  };
};

/** The workings of both ends of a range; a line that is the same for both stands once. */
const bothEnds = (least: readonly string[], most: readonly string[]): readonly string[] => {
  const shared = least.filter((line) => most.includes(line));
  const own = (lines: readonly string[], end: string): readonly string[] =>
    lines.filter((line) => !shared.includes(line)).map((line) => `${end}: ${line}`);
  return [...shared, ...own(least, 'least'), ...own(most, 'most')];
};

/** Makes a relation of its description: defaults, missing inputs, validity, ranges and workings are the same for all. */
export const relation = <const I extends InputSpecs>(definition: Definition<I>): Relation<I> => ({
  ...definition,
  figure: (subject, given, options = {}) => {
    const context = contextOf(options);
    const bound = resolve(definition.inputs, given as Record<string, Given | readonly Given[] | undefined>, context);
    const make = (
      parts: Pick<Figure, 'quantity' | 'missing' | 'notes' | 'confidence' | 'trust'>,
      workings: () => readonly string[],
    ): Figure =>
      canSpeak(
        {
          name: definition.name,
          subject,
          kind: definition.output,
          inputs: bound.inputs,
          formula: definition.formula,
          sources: [...definition.sources, ...bound.sources],
          defaults: bound.notes,
          get workings() {
            return workings();
          },
          ...parts,
        },
        (system) => relation(definition).figure(subject, given, { ...options, system }),
      );
    const none = (notes: readonly string[]): Figure =>
      make(
        {
          quantity: null,
          missing: bound.missing,
          notes: [...bound.notes, ...notes],
          confidence: definition.confidence,
        },
        () => [],
      );
    if (bound.missing.length > 0 || bound.refusals.length > 0) return none(bound.refusals);

    let least: { value: number; outcome: Outcome } | undefined;
    let most: { value: number; outcome: Outcome } | undefined;
    const notes = new Set(bound.notes);
    let byTables = false;
    let confidence = weakest(definition.confidence, ...bound.confidences);
    for (const values of corners(bound.values)) {
      const outcome = definition.compute(values as Values<I>, context);
      if ('refused' in outcome) return none([outcome.refused]);
      const [low, high] = typeof outcome.value === 'number' ? [outcome.value, outcome.value] : outcome.value;
      if (!Number.isFinite(low) || !Number.isFinite(high)) return none(['These inputs give no finite figure.']);
      if (least === undefined || low < least.value) least = { value: low, outcome };
      if (most === undefined || high > most.value) most = { value: high, outcome };
      byTables ||= outcome.withoutTables !== true;
      for (const note of outcome.notes ?? []) notes.add(note);
      if (outcome.confidence !== undefined) confidence = weakest(confidence, outcome.confidence);
    }
    const [from, to] = [least!, most!];
    const trust = byTables ? bound.trust : bound.trustBefore;
    return make(
      {
        quantity: { kind: definition.output, low: from.value, high: to.value },
        missing: [],
        notes: [...notes, ...trust],
        confidence,
        ...(trust.length > 0 && { trust }),
      },
      lazily(() =>
        from.outcome === to.outcome
          ? from.outcome.workings()
          : bothEnds(from.outcome.workings(), to.outcome.workings()),
      ),
    );
  },
});
