import type { Token } from '../../../grammar/tree';
import { keyAt, keys } from './read-terms';
import { Cursor, type Term } from './term';
import { type Form, isPositional, type Slot } from './vocabulary';

/** A slot by its name in the form. */
export interface NamedSlot {
  readonly name: string;
  readonly slot: Slot;
}

/** What may stand next behind the terms of a statement that are there already. */
export interface Expected {
  /** A key stands last and wants its term. */
  readonly awaiting: NamedSlot | null;
  /** The last term, where it could go on (a list, a selection), with its own tokens. */
  readonly continuing: (NamedSlot & { readonly tokens: readonly Token[] }) | null;
  /** A bare number stands last: the term whose unit is missing. */
  readonly unitOf: NamedSlot | null;
  /** Slots that are not filled: the next one without a key (and those behind it, while they may be left out), then clauses. */
  readonly open: readonly NamedSlot[];
  /** Clauses that every statement may carry and that are not there yet. */
  readonly common: readonly NamedSlot[];
  /** Clauses whose key the last words begin: "at" of "at most", with the number of words that are there. */
  readonly begun: readonly (NamedSlot & { readonly words: number })[];
  /** The slot that the last token belongs to. */
  readonly last: NamedSlot | null;
}

/** Reads terms as binding does, up to where they end, and says what could follow. */
export function expect(form: Form, common: Form, tokens: readonly Token[]): Expected {
  const forms = [form, common];
  const cursor = new Cursor(tokens, (index) => keyAt(forms, tokens, index) !== undefined);
  const positional = Object.entries(form).filter(([, slot]) => isPositional(slot));
  const filled = new Set<string>();
  let position = 0;
  let awaiting: NamedSlot | null = null;
  let continuing: Expected['continuing'] = null;
  let unitOf: NamedSlot | null = null;
  let last: NamedSlot | null = null;
  while (!cursor.done) {
    const token = cursor.peek()!;
    if (token.kind === 'comma') {
      cursor.next();
      // Behind a comma that ends the line a list goes on, and a clause may begin.
      const goesOn = last?.slot.term?.shape.includes(', …') || last?.slot.term?.type === 'selection';
      if (cursor.done && goesOn) awaiting = last;
      continue;
    }
    const before = cursor.index;
    const key = keyAt(forms, tokens, cursor.index);
    let named: NamedSlot;
    let from = cursor.index;
    if (key) {
      named = { name: key.name, slot: key.slot };
      cursor.index += key.words.length;
      from = cursor.index;
      filled.add(key.name);
      last = named;
      if (!key.slot.term) continue;
      if (cursor.done) {
        awaiting = named;
        continue;
      }
    } else {
      while (position < positional.length) {
        const slot = positional[position]![1];
        if (!isPositional(slot) || !slot.optional || slot.term.starts(token)) break;
        filled.add(positional[position]![0]);
        position++;
      }
      const here = positional[position];
      if (!here) {
        cursor.next();
        continue;
      }
      position++;
      named = { name: here[0], slot: here[1] };
      filled.add(here[0]);
      last = named;
    }
    const term = named.slot.term!;
    const reading = term.read(cursor);
    if (cursor.index === before) cursor.next();
    if (!cursor.done) continue;
    const own = tokens.slice(from);
    if ('fault' in reading && own.at(-1)?.kind === 'number' && takesUnit(term)) unitOf = named;
    else continuing = { ...named, tokens: own };
  }
  const open: NamedSlot[] = [];
  for (let k = position; k < positional.length; k++) {
    const [name, slot] = positional[k]!;
    open.push({ name, slot });
    if (isPositional(slot) && !slot.optional) break;
  }
  for (const [name, slot] of Object.entries(form))
    if (!isPositional(slot) && !filled.has(name)) open.push({ name, slot });
  return {
    awaiting,
    continuing,
    unitOf,
    open,
    last,
    common: Object.entries(common)
      .filter(([name]) => !filled.has(name))
      .map(([name, slot]) => ({ name, slot })),
    begun: begunKeys(forms, tokens),
  };
}

const takesUnit = (term: Term): boolean => term.kind !== undefined;

function begunKeys(forms: readonly Form[], tokens: readonly Token[]): Expected['begun'] {
  const found: (NamedSlot & { words: number })[] = [];
  for (const form of forms) {
    for (const { name, slot, words } of keys(form)) {
      for (let count = Math.min(words.length - 1, tokens.length); count > 0; count--) {
        const tail = tokens.slice(tokens.length - count);
        if (!tail.every((token, k) => token.text === words[k])) continue;
        found.push({ name, slot, words: count });
        break;
      }
    }
  }
  return found;
}
