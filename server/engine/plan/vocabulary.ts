import type { Kind } from '../circuit/kinds';
import type { Term } from './term';

/**
 * What a word of the language is, said once: from these descriptions come binding and its findings, completion, hover,
 * highlighting and the language reference. This room is handed the words; it owns none.
 */

/** A place where statements stand: the file itself or the block of a word. */
export type Place =
  | 'file'
  | 'plan'
  | 'standard'
  | 'site'
  | 'crew'
  | 'system'
  | 'circuit'
  | 'part'
  | 'branches'
  | 'bring'
  | 'steps'
  | 'step'
  | 'change'
  | 'house-rules'
  | 'record'
  | 'answer'
  | 'solvent'
  | 'nitrogen-cylinder'
  | 'recovery-cylinder'
  | 'recovery-machine'
  | 'pump'
  | 'hose'
  | 'regulator'
  | 'tube'
  | 'oil'
  | 'equipment';

/** A clause: a key (one or more words) and the term that follows it; a flag has no term. */
export interface Clause<T = unknown> {
  readonly key: string;
  readonly term: Term<T> | null;
  readonly meaning: string;
  readonly required?: boolean;
}

/** A term that stands without a key, in order, before or between the clauses. */
export interface Positional<T = unknown> {
  readonly position: true;
  readonly term: Term<T>;
  readonly meaning: string;
  readonly optional?: boolean;
}

export type Slot<T = unknown> = Clause<T> | Positional<T>;
export type Form = Readonly<Record<string, Slot>>;
/** The values that a form's slots give; each may be missing. */
export type Values<F extends Form> = { readonly [K in keyof F]?: F[K] extends Slot<infer T> ? T : never };

/** What a word is good for; the sheet is implied. A word that does nothing else only prints. */
export type Role = 'state' | 'figure' | 'check' | 'sheet';

export interface Word<F extends Form = Form> {
  readonly word: string;
  readonly places: readonly Place[];
  /** May, must or never carry `label:`. */
  readonly label: 'may' | 'must' | 'never';
  readonly form: F;
  /** The place that its block is, if it may have one. */
  readonly block?: Place;
  readonly blockNeeded?: boolean;
  /** At most one in its block. */
  readonly once?: boolean;
  /** The groups of kinds of part that have such a thing, where not all have: a drier has no trap. */
  readonly ofParts?: readonly Kind['group'][];
  readonly meaning: string;
  readonly example: string;
  readonly roles: readonly Role[];
  /** The text that completion inserts, in LSP snippet syntax; made from the form when missing. */
  readonly snippet?: string;
}

export const clause = <T>(key: string, term: Term<T>, meaning: string): Clause<T> => ({ key, term, meaning });
export const needed = <T>(slot: Clause<T>): Clause<T> => ({ ...slot, required: true });
export const flag = (key: string, meaning: string): Clause<true> => ({ key, term: null, meaning });
export const first = <T>(term: Term<T>, meaning: string): Positional<T> => ({ position: true, term, meaning });
export const maybe = <T>(term: Term<T>, meaning: string): Positional<T> => ({
  position: true,
  term,
  meaning,
  optional: true,
});
export const isPositional = (slot: Slot): slot is Positional => 'position' in slot;

/** Describes a word; the types of the form's terms carry over to the values. */
export function word<F extends Form>(
  description: Omit<Word<F>, 'label' | 'form'> & { label?: Word['label']; form?: F },
): Word<F> {
  return { label: 'never', form: {} as F, ...description };
}

/** All words, by the place where they may stand. */
export class Vocabulary {
  readonly words: readonly Word[];
  private readonly byPlace = new Map<Place, Map<string, Word>>();

  constructor(
    words: readonly Word[],
    /** Slots that any statement may carry: `because`, `per`. */
    readonly common: Form,
    /** Places where a name stands in the word's place, and the word that describes it. */
    readonly named: ReadonlyMap<Place, Word>,
  ) {
    this.words = words;
    for (const each of words) {
      for (const place of each.places) {
        let at = this.byPlace.get(place);
        if (!at) this.byPlace.set(place, (at = new Map()));
        at.set(each.word, each);
      }
    }
  }

  at(place: Place): ReadonlyMap<string, Word> {
    return this.byPlace.get(place) ?? new Map();
  }

  word(place: Place, text: string): Word | undefined {
    return this.byPlace.get(place)?.get(text) ?? this.named.get(place);
  }

  /** Every place in which a word of this spelling may stand. */
  anywhere(text: string): readonly Word[] {
    return this.words.filter((each) => each.word === text);
  }
}
