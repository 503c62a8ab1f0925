/**
 * The token types of the language and the lexer that cuts a text into them. Every character lands in a token: what no
 * other token takes, the error token does. Which units exist is handed in; nothing here knows what they measure.
 */
import { createToken, type IToken, Lexer, type TokenType } from 'chevrotain';
import type { TokenKind } from './tree';

/** A blank within a line; the typographer's spaces count, since they come in with pasted text. */
const blank = '[ \\t\\f\\v\\u00a0\\u1680\\u2000-\\u200a\\u202f\\u205f\\u3000]';
/** A hyphen belongs to the word that it stands in, but not where it begins an arrow. */
const wordPart = '(?:[\\p{L}\\p{N}\\p{M}_]|-(?!>))';
/** `4`, `0.5`, `7/8`, `1-1/8`, each with or without a sign. */
const plainNumber = '[+-]?(?:\\d+-\\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?)';
const number = `${plainNumber}(?:\\.\\.${plainNumber})?`;
/** A unit must not be the beginning of something longer: no `in` in `5 install`, no `lb` in `5 lb/yd`. */
const unitEnd = '(?![\\p{L}\\p{N}\\p{M}_/·°]|-(?!>))';

/** Anything of these is seen by the parser as a term. */
export const Term = createToken({ name: 'term', pattern: Lexer.NA });
/** A closing brace that was found to close nothing. */
export const StrayClose = createToken({ name: 'stray-close', pattern: Lexer.NA });

type Hint = string | number;

/** Characters that a token can begin with, so that the lexer tries only the patterns that may fit. */
const digits: Hint[] = [...'0123456789'];
const signs: Hint[] = ['+', '-'];
const latin: Hint[] = Array.from({ length: 256 }, (_, code) => code);
/** The lexer groups codes above 255 by 255; one code of each group stands for the group. */
const beyondLatin: Hint[] = Array.from({ length: 257 }, (_, group) => Math.min(256 + group * 255, 0xffff));
const letters: Hint[] = [...latin.filter((code) => /\p{L}/u.test(String.fromCharCode(code as number))), ...beyondLatin];
const blanks: Hint[] = [' ', '\t', '\f', '\v', '\u00a0', ...beyondLatin];

function token(kind: TokenKind, source: string, begin: Hint[], category?: TokenType): TokenType {
  const expression = new RegExp(source, 'uy');
  return createToken({
    name: kind,
    pattern: (text: string, offset: number) => {
      expression.lastIndex = offset;
      return expression.exec(text) as RegExpExecArray;
    },
    start_chars_hint: begin,
    line_breaks: kind === 'newline',
    ...(category === undefined ? {} : { categories: [category] }),
  });
}

export const Word = token('word', `\\p{L}${wordPart}*`, letters, Term);
const Text = token('string', '"[^"\\r\\n]*"?', ['"'], Term);
const DateToken = token('date', '\\d{4}-\\d{2}(?:-\\d{2})?(?![\\p{L}\\p{N}_/-])', digits, Term);
const TimeToken = token('time', '\\d{1,2}:\\d{2}(?![\\p{L}\\p{N}_:])', digits, Term);
const NumberToken = token('number', number, [...digits, ...signs], Term);
const Comma = token('comma', ',', [','], Term);
export const Colon = token('colon', ':', [':'], Term);
const Arrow = token('arrow', '->', ['-'], Term);
export const Open = token('open', '\\{', ['{']);
export const Close = token('close', '\\}', ['}']);
const Space = token('space', `${blank}+`, blanks);
const Comment = token('comment', '#[^\\r\\n]*', ['#']);
export const Newline = token('newline', '\\r\\n|\\n|\\r', ['\r', '\n']);
/** A run of characters that begin nothing, signs without a figure among them, or else one character. */
export const Unreadable = token(
  'error',
  '(?:[^\\p{L}\\p{N}\\s"#{},:+-]|[+-](?![\\d>]))+|[^]',
  [...latin, ...beyondLatin],
  Term,
);

function quantityToken(unitWords: readonly string[]): TokenType {
  const units = [...unitWords]
    .sort((one, other) => other.length - one.length)
    .map((unit) => unit.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&').replace(/\s+/g, `${blank}+`));
  const part = `${number}${blank}*(?:${units.join('|')})${unitEnd}`;
  return token('quantity', `${part}(?:${blank}+${part})*`, [...digits, ...signs], Term);
}

/** Every token in the order of the text; together they are the whole text. */
export type Tokenizer = (text: string) => IToken[];

/**
 * The order of the list settles which token wins: dates and times before numbers, quantities before bare numbers.
 * All types are also what the parser needs to know.
 */
export function createTokenizer(unitWords: readonly string[]): Tokenizer {
  const quantity = unitWords.length > 0 ? [quantityToken(unitWords)] : [];
  const types = [
    Space,
    Word,
    Newline,
    Comma,
    DateToken,
    TimeToken,
    ...quantity,
    NumberToken,
    Text,
    Arrow,
    Colon,
    Open,
    Close,
    Comment,
    Unreadable,
    Term,
  ];
  const lexer = new Lexer(types, { positionTracking: 'onlyOffset', skipValidations: true });
  return (text) => lexer.tokenize(text).tokens;
}

export function kindOf(token: IToken): TokenKind {
  return token.tokenType === StrayClose ? 'close' : (token.tokenType.name as TokenKind);
}

/** What the parser is told of: the concrete term types reach it through their category. */
export const parserVocabulary: TokenType[] = [Term, Word, Colon, Open, Close, StrayClose, Newline, Unreadable];
