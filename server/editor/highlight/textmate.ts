import { kinds } from '../../engine/circuit/kinds';
import { isPositional, type Vocabulary } from '../../engine/plan/vocabulary';

/** A TextMate grammar, as far as this language needs one. */
export interface TextMateGrammar {
  readonly name: string;
  readonly scopeName: string;
  readonly comment: string;
  readonly patterns: readonly { readonly include: string }[];
  readonly repository: Readonly<Record<string, TextMateRule>>;
}

interface TextMateRule {
  readonly name?: string;
  readonly match?: string;
  readonly captures?: Readonly<Record<string, { readonly name: string }>>;
}

const wordPart = '[\\p{L}\\p{N}\\p{M}_-]';
/** Where a statement begins: the line, or behind a brace, with or without a label. */
const begin = '(?:^|(?<=[{}]))\\s*';
const label = `(\\p{L}${wordPart}*)(:)`;
const start = `${begin}(?:${label}\\s*)?`;
const escaped = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
/** Longer words first, so that none is cut short. */
const anyOf = (words: Iterable<string>): string =>
  [...new Set(words)]
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
    .map(escaped)
    .join('|');

/**
 * The grammar file by which an editor colours a plan before the server has looked at it, made from the vocabulary: the
 * words of statements, verbs and kinds of part, the keys of clauses, quantities, dates, texts and comments.
 */
export function textMateGrammar(vocabulary: Vocabulary, unitWords: readonly string[]): TextMateGrammar {
  const verbs = vocabulary.words.filter((word) => 'verb' in word && word.block !== 'steps').map((word) => word.word);
  const parts = kinds.map((kind) => kind.kind);
  const others = vocabulary.words
    .map((word) => word.word)
    .filter((word) => !verbs.includes(word) && !parts.includes(word));
  const keys = [vocabulary.common, ...vocabulary.words.map((word) => word.form)].flatMap((form) =>
    Object.values(form).flatMap((slot) => (isPositional(slot) || slot.key === '->' ? [] : [slot.key])),
  );
  const head = (words: readonly string[], name: string): TextMateRule => ({
    match: `${start}(${anyOf(words)})(?!${wordPart})`,
    captures: {
      1: { name: 'entity.name.tag.label.jobplan' },
      2: { name: 'punctuation.separator.label.jobplan' },
      3: { name },
    },
  });
  const number = '[+-]?\\d+(?:-\\d+/\\d+|/\\d+|\\.\\d+)?';
  return {
    name: 'Job Plan',
    scopeName: 'source.jobplan',
    comment: 'Made from the vocabulary by "npm run textmate"; do not edit by hand.',
    patterns: ['comment', 'string', 'verb', 'part', 'word', 'label', 'date', 'quantity', 'clause', 'arrow'].map(
      (name) => ({ include: `#${name}` }),
    ),
    repository: {
      comment: { name: 'comment.line.number-sign.jobplan', match: '#.*$' },
      string: { name: 'string.quoted.double.jobplan', match: '"[^"]*(?:"|$)' },
      verb: head(verbs, 'support.function.jobplan'),
      part: head(parts, 'entity.name.type.jobplan'),
      word: head(others, 'keyword.control.jobplan'),
      label: {
        match: `${begin}${label}`,
        captures: { 1: { name: 'entity.name.tag.label.jobplan' }, 2: { name: 'punctuation.separator.label.jobplan' } },
      },
      date: { name: 'constant.numeric.date.jobplan', match: '\\b(?:\\d{4}-\\d{2}(?:-\\d{2})?|\\d{1,2}:\\d{2})\\b' },
      quantity: {
        name: 'constant.numeric.jobplan',
        match: `(?<!${wordPart})${number}(?:\\.\\.${number})?(?:\\s*(?:${anyOf(unitWords)})(?![\\p{L}\\p{N}/]))?`,
      },
      clause: {
        name: 'variable.other.property.jobplan',
        match: `(?<!${wordPart})(?:${anyOf(keys)})(?!${wordPart})`,
      },
      arrow: { name: 'keyword.operator.jobplan', match: '->' },
    },
  };
}

/** The grammar as the file holds it. */
export const textMateFile = (vocabulary: Vocabulary, unitWords: readonly string[]): string =>
  `${JSON.stringify(textMateGrammar(vocabulary, unitWords), null, 2)}\n`;
