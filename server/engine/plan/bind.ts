import type { Block, Statement, Token } from '../../../grammar/tree';
import { nearest } from '../quantity';
import { withPlace } from './elsewhere';
import { backwardRounds, type Span } from './read-terms';
import { meantWord, rereadTerms } from './reread';
import { shortened } from './shortened';
import { end, type TermFault } from './term';
import type { Place, Vocabulary, Word } from './vocabulary';

/** A statement with its meaning: its word, its terms as values, its block bound in turn. */
export interface Bound {
  readonly item: Statement;
  readonly place: Place;
  /** Null where no such word may stand there; the statement is then passed over by everything but its own finding. */
  readonly word: Word | null;
  readonly label: (Span & { readonly text: string }) | null;
  readonly values: Readonly<Record<string, unknown>>;
  /** Where each value stands in the statement, its key included. */
  readonly spans: Readonly<Record<string, Span>>;
  readonly block: readonly Bound[];
  readonly faults: readonly TermFault[];
}

/** Binds statements to the vocabulary; remembers each statement's meaning by the statement itself. */
export class Binder {
  private readonly kept = new WeakMap<Statement, Bound>();
  private readonly blocks = new WeakMap<Block, readonly Bound[]>();

  constructor(readonly vocabulary: Vocabulary) {}

  statements(items: Block['items'], place: Place): readonly Bound[] {
    const bound: Bound[] = [];
    for (const item of items) if (item.kind === 'statement') bound.push(this.statement(item, place));
    return bound;
  }

  statement(item: Statement, place: Place): Bound {
    const known = this.kept.get(item);
    if (known && known.place === place) return known;
    const bound = this.bind(item, place);
    this.kept.set(item, bound);
    return bound;
  }

  private block(block: Block, place: Place): readonly Bound[] {
    let bound = this.blocks.get(block);
    if (!bound) {
      bound = this.statements(block.items, place);
      this.blocks.set(block, bound);
    }
    return bound;
  }

  private bind(item: Statement, place: Place): Bound {
    const labelToken = item.label;
    const label = labelToken ? { text: labelToken.text, from: labelToken.at, to: end(labelToken) } : null;
    const token = item.word;
    if (!token) return { item, place, word: null, label, values: {}, spans: {}, block: [], faults: [] };
    const whole = { from: token.at, to: end(token) };
    // A change's block holds clauses of the step that it changes; only that step can read them.
    if (place === 'change') return { item, place, word: null, label, values: {}, spans: {}, block: [], faults: [] };
    const known = this.vocabulary.word(place, token.text);
    const word = known ?? meantWord(this.vocabulary, place, token.text);
    const unknown = known ? [] : [this.unknown(token, place)];
    if (!word) return { item, place, word: null, label, values: {}, spans: {}, block: [], faults: unknown };
    const named = this.vocabulary.named.get(place) === word;
    const read = rereadTerms(word.form, this.vocabulary.common, item.terms, whole);
    const { values, spans } = read;
    const faults = [
      ...unknown,
      ...read.faults.map((fault) => withPlace(fault, this.vocabulary, place, word, item.terms)),
    ];
    const backward = backwardRounds(values, spans['most'] ?? whole);
    if (backward) faults.push(backward);
    if (label && word.label === 'never' && !named) {
      faults.push({
        name: 'label-not-here',
        message: `"${token.text}" takes no label.`,
        from: label.from,
        to: label.to,
        instead: [],
      });
    }
    if (item.block && !word.block) {
      const brace = [...item.head].reverse().find((each) => each.kind === 'open');
      faults.push({
        name: 'block-not-here',
        message: `"${token.text}" takes no block.`,
        from: brace?.at ?? whole.from,
        to: brace ? end(brace) : whole.to,
        instead: [],
      });
    }
    // A block that stands too deep to be read is there all the same.
    if (!item.block && word.blockNeeded && !item.faults.some((each) => each.name === 'too-deep')) {
      faults.push({ name: 'missing-block', message: `"${token.text}" needs a block: { … }.`, ...whole, instead: [] });
    }
    const block = item.block && word.block ? this.block(item.block, word.block) : [];
    return { item, place, word, label, values, spans, block, faults };
  }

  private unknown(token: Token, place: Place): TermFault {
    const here = [...this.vocabulary.at(place).keys()];
    const near = nearest(token.text, here);
    const elsewhere = this.vocabulary.anywhere(token.text)[0];
    const where = elsewhere
      ? ` It belongs in ${elsewhere.places.map((each) => (each === 'file' ? 'the file itself' : `a ${each} block`)).join(' or ')}.`
      : '';
    return {
      name: 'unknown-word',
      message: `"${shortened(token.text)}" is no word of a ${place === 'file' ? 'plan file' : `${place} block`}${near ? `; the nearest is "${near}"` : ''}.${where}`,
      from: token.at,
      to: end(token),
      instead: near ? [near] : [],
    };
  }
}

/** Statements of a block whose word may stand once and stands again, each with the first one. */
export function repeatedOnce(block: readonly Bound[]): readonly { again: Bound; first: Bound }[] {
  const seen = new Map<Word, Bound>();
  const found: { again: Bound; first: Bound }[] = [];
  for (const each of block) {
    if (!each.word?.once) continue;
    const before = seen.get(each.word);
    if (before) found.push({ again: each, first: before });
    else seen.set(each.word, each);
  }
  return found;
}

/** The first statement of a word in a block. */
export const child = (block: readonly Bound[], word: string): Bound | undefined =>
  block.find((each) => each.word?.word === word);
export const children = (block: readonly Bound[], word: string): readonly Bound[] =>
  block.filter((each) => each.word?.word === word);
