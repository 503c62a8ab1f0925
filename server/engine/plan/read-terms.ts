import type { Token } from '../../../grammar/tree';
import { nearest } from '../quantity';
import { shortened } from './shortened';
import { Cursor, end, type TermFault } from './term';
import { type Form, isPositional, type Slot } from './vocabulary';

export interface Span {
  readonly from: number;
  readonly to: number;
}

const isUnreadable = (token: Token): boolean => token.kind === 'error';

/** A line without what the text has no meaning for, and without what stands between brackets: a remark of its author. */
function readable(tokens: readonly Token[]): readonly Token[] {
  let depth = 0;
  return tokens.filter((token) => {
    if (!isUnreadable(token)) return depth === 0;
    if (token.text.includes('(')) depth++;
    if (token.text.includes(')')) depth = Math.max(0, depth - 1);
    return false;
  });
}

/** The name under which a slot's value stands, with its key cut into words; made once a form. */
export interface Key {
  readonly name: string;
  readonly slot: Slot;
  readonly words: readonly string[];
}
const keysOf = new WeakMap<Form, readonly Key[]>();
export function keys(form: Form): readonly Key[] {
  let found = keysOf.get(form);
  if (!found) {
    found = Object.entries(form)
      .filter(([, slot]) => !isPositional(slot))
      .map(([name, slot]) => ({ name, slot, words: (slot as { key: string }).key.split(' ') }))
      .sort((a, b) => b.words.length - a.words.length);
    keysOf.set(form, found);
  }
  return found;
}

/** The slot whose key begins at a token, if what follows can be its term. */
export function keyAt(forms: readonly Form[], tokens: readonly Token[], index: number): Key | undefined {
  let likely: Key | undefined;
  let weak: Key | undefined;
  for (const form of forms) {
    for (const key of keys(form)) {
      if (
        !key.words.every(
          (word, k) =>
            (tokens[index + k]?.kind === 'word' || tokens[index + k]?.kind === 'arrow') &&
            tokens[index + k]!.text === word,
        )
      )
        continue;
      const { term } = key.slot;
      const following = tokens[index + key.words.length];
      if (!term || (following && term.type === following.kind)) return key;
      // A bare number may be a count or a quantity that lacks its unit: the count comes first if there is one.
      if (following && term.starts(following)) likely ??= key;
      weak ??= key;
    }
  }
  if (likely) return likely;
  // `per zone` is no `per "…"`; but `at` at the line's end is an `at` that still wants its term.
  return weak && (tokens[index + weak.words.length] === undefined || weak.words[0] !== 'per') ? weak : undefined;
}

export interface Terms {
  readonly values: Record<string, unknown>;
  readonly spans: Record<string, Span>;
  readonly faults: TermFault[];
}

/** Terms and commas of one line that are read: the longest list of a large job has some ten. */
const mostTokens = 400;

/** Reads terms by a form: positional ones in order, clauses in any order, commas between them as the author likes. */
export function readTerms(form: Form, common: Form, all: readonly Token[], whole: Span, partial = false): Terms {
  if (all.length > mostTokens) {
    const read = readTerms(form, common, all.slice(0, mostTokens), whole, partial);
    read.faults.push({
      name: 'unexpected-term',
      message: `This line is too long: what stands behind its first ${mostTokens} words is not read.`,
      from: all[mostTokens]!.at,
      to: end(all.at(-1)!),
      instead: [],
    });
    return read;
  }
  // What the text itself has no meaning for is told by its own fault, and only there.
  const tokens = all.some(isUnreadable) ? readable(all) : all;
  const values: Record<string, unknown> = {};
  const spans: Record<string, Span> = {};
  const faults: TermFault[] = [];
  const forms = [form, common];
  const cursor = new Cursor(tokens, (index) => keyAt(forms, tokens, index) !== undefined);
  const positional = Object.entries(form).filter(([, slot]) => isPositional(slot));
  let position = 0;
  const take = (name: string, slot: Slot, from: number): void => {
    if (!slot.term) {
      values[name] = true;
      spans[name] = { from, to: end(tokens[cursor.index - 1]!) };
      return;
    }
    const reading = slot.term.read(cursor);
    if ('fault' in reading) {
      const { fault } = reading;
      const last = tokens[cursor.index - 1];
      // A span without a value says that something was said there which cannot be read: see `isUnread`.
      if (!(name in values) && last) spans[name] = { from, to: Math.max(end(last), fault.to) };
      faults.push(
        fault.from >= 0 ? fault : { ...fault, from: last ? last.at : whole.from, to: last ? end(last) : whole.to },
      );
    } else {
      if (name in values)
        faults.push({
          name: 'said-twice',
          message: isPositional(slot)
            ? 'This is said twice in one line.'
            : `"${(slot as { key: string }).key}" is said twice in one line.`,
          from,
          to: end(tokens[cursor.index - 1]!),
          instead: [],
        });
      values[name] = reading.value;
      spans[name] = { from, to: end(tokens[cursor.index - 1]!) };
    }
  };
  while (!cursor.done) {
    const token = cursor.peek()!;
    if (token.kind === 'comma') {
      cursor.next();
      continue;
    }
    const before = cursor.index;
    const key = keyAt(forms, tokens, cursor.index);
    if (key) {
      cursor.index += key.words.length;
      const known = faults.length;
      take(key.name, key.slot, token.at);
      // What was refused as the term of its clause has its fault, and is not looked at again by itself.
      const left = cursor.peek();
      if (faults.length > known && left && left.at === faults.at(-1)!.from && !cursor.atStop) cursor.next();
      continue;
    }
    while (position < positional.length) {
      const slot = positional[position]![1];
      if (!('optional' in slot && slot.optional) || slot.term!.starts(token)) break;
      position++;
    }
    const here = positional[position];
    if (here) {
      position++;
      take(here[0], here[1], token.at);
      if (cursor.index === before) cursor.next();
      continue;
    }
    // Nothing takes this token: one fault for the whole run up to the next clause, with the nearest key.
    const from = token.at;
    do cursor.next();
    while (!cursor.atStop && cursor.peek()?.kind !== 'comma');
    const likely =
      token.kind === 'word'
        ? nearest(token.text, [
            ...forms.flatMap((each) => keys(each).map((known) => known.words[0]!)),
            // A word that was meant for a place that may be left out: `AVR` for `ACR`.
            ...positional.flatMap(([name, slot]) => (name in values ? [] : (slot.term?.choices ?? []))),
          ])
        : undefined;
    const near = likely === token.text ? undefined : likely;
    const shown = likely !== token.text ? token.text : `${token.text} ${tokens[before + 1]?.text ?? ''}`.trim();
    faults.push({
      name: 'unexpected-term',
      message: `"${shortened(shown)}" cannot stand here${near ? `; the nearest is "${near}"` : ''}.`,
      from,
      to: near ? end(token) : end(tokens[cursor.index - 1]!),
      instead: near ? [near] : [],
    });
  }
  if (tokens !== all) return { values, spans, faults: [] };
  if (!partial && faults.length === 0) {
    for (const [name, slot] of Object.entries(form)) {
      const wanted = isPositional(slot) ? !slot.optional : slot.required;
      if (!wanted || name in values) continue;
      const such = slot.term?.example ? `, such as ${slot.term.example}` : '';
      faults.push({
        name: 'missing-term',
        message: isPositional(slot)
          ? `Missing here: ${slot.meaning}${such}.`
          : `Missing here: "${(slot as { key: string }).key} …", ${slot.meaning}${such}.`,
        ...whole,
        instead: [],
      });
    }
  }
  return { values, spans, faults };
}

/** A number of rounds at the least that is above the number at the most. */
export function backwardRounds(values: Readonly<Record<string, unknown>>, at: Span): TermFault | null {
  const { least, most } = values;
  if (typeof least !== 'number' || typeof most !== 'number' || least <= most) return null;
  return {
    name: 'backward-range',
    message: `At least ${least} and at most ${most} cannot both be kept.`,
    ...at,
    instead: [],
  };
}
