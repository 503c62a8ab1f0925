import type { Token } from '../../../grammar/tree';
import { editDistance, isSlip, unitWords } from '../quantity';
import { keys, readTerms, type Span, type Terms } from './read-terms';
import { type Selector, standings } from './selection';
import { shortened } from './shortened';
import { end, type TermFault } from './term';
import type { Form, Place, Slot, Vocabulary, Word } from './vocabulary';

/**
 * What a line with one slip of the keys was meant to say. The slip has its finding; what follows is judged as if the line
 * had been written right, so that one slip is one finding and not also a step that was never done.
 */

/** The word that a misspelt first word of a line can only mean: the nearest, or of several the one that it begins. */
export function meantWord(vocabulary: Vocabulary, place: Place, text: string): Word | null {
  const near = [...vocabulary.at(place).keys()]
    .filter((known) => isSlip(text, known))
    .map((known) => ({ known, slips: editDistance(text.toLowerCase(), known.toLowerCase()) }));
  const least = Math.min(...near.map(({ slips }) => slips));
  const nearest = near.filter(({ slips }) => slips === least).map(({ known }) => known);
  const begun = nearest.filter((known) => known.startsWith(text));
  const meant = nearest.length === 1 ? nearest[0] : begun.length === 1 ? begun[0] : undefined;
  return meant === undefined ? null : (vocabulary.word(place, meant) ?? null);
}

/** Letters of a word or a quantity; what is longer is no slip. */
const longest = 64;
/** Words of a line that are looked at: a slip stands in a line that somebody wrote, not in a list of hundreds. */
const mostWords = 40;

/** Reads the terms of a line; where that fails, once more with the word put right that was most likely meant. */
export function rereadTerms(form: Form, common: Form, tokens: readonly Token[], whole: Span): Terms {
  const first = readTerms(form, common, tokens, whole);
  if ((first.faults.length === 0 && !swallows(form, first)) || tokens.length > mostWords) return first;
  const words = wordsOf(form, common);
  for (const [at, token] of tokens.entries()) {
    if (token.text.length > longest) continue;
    const told = first.faults.find(({ from, to }) => from <= token.at && end(token) <= to);
    for (const { meant, mended } of mendings(tokens, at, told, words)) {
      const again = readTerms(form, common, mended, whole);
      if (again.faults.length > 0 || swallows(form, again)) continue;
      return { ...again, spans: spansAsWritten(again, token, meant), faults: [told ?? slipFault(token, meant.text)] };
    }
  }
  return leftOut(form, common, tokens, whole, first) ?? first;
}

/** Words that are left out together: `length 3 ft` in a place that knows no length. */
const mostLeftOut = 3;

/**
 * Reads the line with the fewest words left out that makes it read: what nobody understands is told once, and the rest of the
 * step is done. Null where no few words are at fault.
 */
function leftOut(form: Form, common: Form, tokens: readonly Token[], whole: Span, first: Terms): Terms | null {
  const [told] = first.faults;
  if (!told || told.name === 'said-twice' || told.name === 'missing-term') return null;
  for (const { out, rest } of shortenings(form, tokens, first, told)) {
    const again = readTerms(form, common, rest, whole);
    if (again.faults.length > 0 || swallows(form, again) || joins(form, first, again)) continue;
    const unread = Object.entries(first.spans).filter(([name]) => !(name in first.values) && !(name in again.values));
    const [from, to] = [out[0]!.at, end(out.at(-1)!)];
    const says = told.name !== 'unexpected-term' || told.instead.length > 0;
    return {
      values: again.values,
      spans: { ...again.spans, ...Object.fromEntries(unread) },
      faults: [
        says && from <= told.from && told.to <= to
          ? told
          : { name: 'unexpected-term', message: strange(out), from, to, instead: [] },
      ],
    };
  }
  return null;
}

/** A line without some words at its fault: first without what was told and the words that ran into the noun before it. */
function* shortenings(
  form: Form,
  tokens: readonly Token[],
  first: Terms,
  told: TermFault,
): Generator<{ readonly out: readonly Token[]; readonly rest: readonly Token[] }> {
  const kept = understood(form, tokens, first);
  const without = (at: number, count: number) => ({
    out: tokens.slice(at, at + count),
    rest: [...tokens.slice(0, at), ...tokens.slice(at + count)],
  });
  const inTold = tokens.filter((token) => told.from <= token.at && end(token) <= told.to && !kept.has(token));
  const at = inTold.length > 0 ? tokens.indexOf(inTold[0]!) : 0;
  let before = 0;
  const runsIn = (token: Token): boolean => token.kind !== 'comma' && !kept.has(token);
  while (before < Math.min(at, mostLeftOut) && runsIn(tokens[at - before - 1]!)) before++;
  for (; before > 0; before--) yield without(at - before, inTold.length + before);
  for (let count = 1; count <= mostLeftOut; count++)
    for (let from = 0; from + count <= tokens.length; from++) {
      const made = without(from, count);
      if (made.out.some((token) => kept.has(token)) || isPiece(tokens, from, count)) continue;
      // Half a figure is none: of `5 bananas` the number goes with its word.
      const isHalf = inTold.some((token) => !made.out.includes(token));
      if (isHalf && made.out.some((token) => inTold.includes(token) && token.kind !== 'word')) continue;
      // What is left out stands in the fault, or beside it.
      if (end(made.out.at(-1)!) + 1 >= told.from && made.out[0]!.at <= told.to + 1) yield made;
    }
  if (inTold.length > mostLeftOut) yield without(at, inTold.length);
}

/** Whether words stand together with others, with no blank between: `e3` of `1e3` says nothing by itself. */
const isPiece = (tokens: readonly Token[], at: number, count: number): boolean =>
  [at, at + count].some(
    (k) =>
      tokens[k - 1] !== undefined &&
      tokens[k] !== undefined &&
      end(tokens[k - 1]!) === tokens[k]!.at &&
      tokens[k]!.kind !== 'comma' &&
      tokens[k - 1]!.kind !== 'comma',
  );

/** The words of a line that were read, but for those that may have run into a noun behind its first word. */
function understood(form: Form, tokens: readonly Token[], { values, spans }: Terms): ReadonlySet<Token> {
  const found = new Set<Token>();
  for (const [name, span] of Object.entries(spans)) {
    if (!(name in values)) continue;
    const isSelection = (form[name] as Slot | undefined)?.term?.type === 'selection' && Array.isArray(values[name]);
    const runIn = isSelection
      ? (values[name] as readonly Selector[]).flatMap(({ noun }) => noun.split(' ').slice(1))
      : [];
    for (const token of tokens)
      if (span.from <= token.at && end(token) <= span.to && !runIn.includes(token.text)) found.add(token);
  }
  return found;
}

/** Whether words that stood apart have run together to one noun, since the word between them went. */
function joins(form: Form, before: Terms, after: Terms): boolean {
  const nouns = (terms: Terms): readonly string[] =>
    Object.entries(form).flatMap(([name, slot]) => {
      const value = terms.values[name];
      return (slot as Slot).term?.type === 'selection' && Array.isArray(value)
        ? (value as readonly Selector[]).map(({ noun }) => noun)
        : [];
    });
  const known = nouns(before);
  return nouns(after).some((noun) => noun.includes(' ') && !known.includes(noun));
}

const strange = (tokens: readonly Token[]): string =>
  `"${shortened(tokens.map((token) => token.text).join(' '))}" cannot stand here.`;

/** A token in place of a slip, and the line with it. */
interface Mending {
  readonly meant: Token;
  readonly mended: readonly Token[];
}

/** What a word, a quantity or a number with a misspelt unit may have been meant to be, the likeliest first. */
function* mendings(
  tokens: readonly Token[],
  at: number,
  told: TermFault | undefined,
  words: readonly string[],
): Generator<Mending> {
  const token = tokens[at]!;
  const before = tokens[at - 1];
  const by = (meant: Token, from: number): Mending => ({
    meant,
    mended: [...tokens.slice(0, from), meant, ...tokens.slice(at + 1)],
  });
  if (token.kind === 'word') {
    for (const text of [
      ...(told?.instead ?? []),
      ...words.filter((word) => word !== token.text && isSlip(token.text, word)),
    ])
      yield by({ ...token, text }, at);
    if (before?.kind === 'number' && told && told.from <= before.at)
      for (const unit of unitWords.filter((each) => isSlip(token.text, each)))
        yield by({ ...before, kind: 'quantity', text: `${before.text} ${unit}` }, at - 1);
  }
  if (token.kind === 'quantity' && told) {
    const [, figures = '', unit = ''] = /^(.*?)(\S+)$/.exec(token.text) ?? [];
    const near = unitWords.filter((each) => isSlip(unit, each)).map((each) => figures + each);
    for (const text of [...told.instead, ...near]) yield by({ ...token, text }, at);
  }
}

/** Whether a list of parts took in words that are none of its own: `flush each kept line int container`. */
function swallows(form: Form, terms: Terms): boolean {
  return Object.entries(form).some(([name, slot]) => {
    const { term } = slot as Slot;
    const value = terms.values[name];
    if (term?.type !== 'selection' || !Array.isArray(value)) return false;
    return (value as readonly Selector[]).some(
      ({ noun }) =>
        noun.includes(' ') && !term.choices?.includes(noun) && (!term.free || noun.split(' ').some(isAlmostNarrowing)),
    );
  });
}

/** Words before a noun; the shortest are left out, since many a word is one letter from `new` and `old`. */
const narrowing = ['each', ...standings].filter((word) => word.length > 3);
const isAlmostNarrowing = (word: string): boolean =>
  !narrowing.includes(word) && narrowing.some((known) => isSlip(word, known));

const wordsOfForm = new WeakMap<Form, readonly string[]>();

/** The words that a form knows: of its keys and of its choices. */
function wordsOf(form: Form, common: Form): readonly string[] {
  let found = wordsOfForm.get(form);
  if (!found) {
    const choices = [form, common].flatMap((each) =>
      Object.values(each).flatMap((slot) =>
        ((slot as Slot).term?.choices ?? []).flatMap((choice) => choice.split(' ')),
      ),
    );
    const selects = Object.values(form).some((slot) => (slot as Slot).term?.type === 'selection');
    found = [
      ...new Set([
        ...[form, common].flatMap((each) => keys(each).flatMap((key) => key.words)),
        ...choices,
        ...(selects ? narrowing : []),
      ]),
    ];
    wordsOfForm.set(form, found);
  }
  return found;
}

/** Spans count the letters as they stand in the text. */
function spansAsWritten(terms: Terms, written: Token, meant: Token): Record<string, Span> {
  return Object.fromEntries(
    Object.entries(terms.spans).map(([name, span]) => [
      name,
      span.to === end(meant) ? { ...span, to: end(written) } : span,
    ]),
  );
}

const slipFault = (token: Token, meant: string): TermFault => ({
  name: 'unexpected-term',
  message: `"${shortened(token.text)}" cannot stand here; the nearest is "${meant}".`,
  from: token.at,
  to: end(token),
  instead: [meant],
});
