import type { Draft } from '../circuit/settle';
import type { Space } from '../circuit/spaces';
import type { Cause } from '../circuit/state';
import type { Plan } from '../plan/plan';
import type { Selector } from '../plan/selection';
import type { Step } from '../plan/step';
import type { Amount } from '../plan/term';
import type { Form, Role, Values, Word } from '../plan/vocabulary';
import type { Quantity } from '../quantity';
import type { Event } from './events';

/** What a selector stands for, once the circuit is known. */
export interface Target {
  readonly selector: Selector;
  readonly parts: readonly number[];
  /** Not a part of the circuit: a thing that only people know, or a noun of the verb. */
  readonly thing: string | null;
}

/** What a verb works with while it is walked. */
export interface Act {
  readonly draft: Draft;
  readonly plan: Plan;
  readonly step: Step;
  /** The handle under which states remember this step. */
  readonly cause: Cause;
  /** In a repeat: which round this is, from 1. */
  readonly round: number | null;
  targets(selectors: readonly Selector[] | undefined): readonly Target[];
  /** The part indexes of all selectors, each once, in flow order. */
  parts(selectors: readonly Selector[] | undefined): readonly number[];
  /** The spaces that the selectors' parts hang in, as the plant stands now. */
  spaces(selectors: readonly Selector[] | undefined): readonly Space[];
  /** The amount at the site's atmosphere; null if it is missing or cannot be. */
  quantity(amount: Amount | undefined): Quantity | null;
  emit(event: Event): void;
}

/** How a step reads on paper: the sentence, and what stands at the right edge. */
export interface Wording {
  readonly sentence: string;
  readonly aside?: string;
}

/** What a verb's sentence may speak of. */
export interface Speech {
  readonly step: Step;
  /** The names that the selectors stand for at this step: "liquid-line and suction-line". */
  parts(selectors: readonly Selector[] | undefined): string;
  /** `, one line at a time` where the step works several lines; nothing where it works one. */
  inTurn(): string;
  /** A parameter of the plan, as the job states it: "450 psig". */
  parameter(name: string): string;
  /** An amount as the author wrote it. */
  amount(amount: Amount | undefined): string;
}

/** A step verb: one file, with its words, what it changes, and how it prints. */
export interface Verb<F extends Form = Form> extends Word<F> {
  readonly verb: true;
  perform(values: Values<F>, act: Act): void;
  say(values: Values<F>, speech: Speech): Wording;
  /** Work, minutes, beside waiting times that the step itself states; least to most. */
  readonly minutes: readonly [least: number, most: number];
}

export function verb<F extends Form>(description: {
  word: string;
  meaning: string;
  example: string;
  form?: F;
  roles: readonly Role[];
  minutes: readonly [number, number];
  blockOf?: 'steps' | 'step';
  blockNeeded?: boolean;
  perform?: (values: Values<F>, act: Act) => void;
  say: (values: Values<F>, speech: Speech) => Wording;
  snippet?: string;
}): Verb<F> {
  const { blockOf, perform, form, ...rest } = description;
  return {
    ...rest,
    verb: true,
    places: ['steps'],
    label: 'may',
    form: form ?? ({} as F),
    block: blockOf ?? 'step',
    perform: perform ?? (() => {}),
  };
}
