import { kindNamed } from '../../engine/circuit/kinds';
import type { Bound } from '../../engine/plan/bind';
import { keyAt } from '../../engine/plan/read-terms';
import { vocabulary } from '../../engine/vocabulary';
import { mentionsIn } from '../names';

/** What the colours tell apart; indexes are the protocol's legend. Numbers, texts and comments are the grammar file's. */
export const tokenTypes = ['keyword', 'function', 'class', 'property', 'enumMember', 'variable', 'label'] as const;
export const tokenModifiers = ['declaration'] as const;
type TokenType = (typeof tokenTypes)[number];

/** A coloured piece of a statement's own line, from the statement's start. */
export interface Piece {
  readonly at: number;
  readonly length: number;
  readonly type: number;
  readonly modifiers: number;
}

const made = new WeakMap<Bound, readonly Piece[]>();

/** The coloured pieces of a statement's line, in order; made once a statement. */
export function piecesOf(bound: Bound): readonly Piece[] {
  let known = made.get(bound);
  if (!known) made.set(bound, (known = make(bound)));
  return known;
}

function make(bound: Bound): readonly Piece[] {
  const { item, word } = bound;
  const pieces = new Map<number, Piece>();
  const add = (at: number, length: number, type: TokenType, declares = false): void => {
    if (!pieces.has(at)) pieces.set(at, { at, length, type: tokenTypes.indexOf(type), modifiers: declares ? 1 : 0 });
  };
  if (bound.label) add(bound.label.from, bound.label.to - bound.label.from, 'label', true);
  if (word && item.word) add(item.word.at, item.word.text.length, wordType(bound));
  for (const mention of mentionsIn(bound))
    add(mention.from, mention.to - mention.from, mention.refers === 'label' ? 'label' : 'variable', mention.declares);
  if (word) {
    const forms = [word.form, vocabulary.common];
    for (let index = 0; index < item.terms.length; index++) {
      const token = item.terms[index]!;
      if (token.kind !== 'word' || pieces.has(token.at)) continue;
      const key = keyAt(forms, item.terms, index);
      if (key) {
        for (let k = 0; k < key.words.length; k++) {
          const each = item.terms[index + k]!;
          if (each.kind === 'word') add(each.at, each.text.length, 'property');
        }
        index += key.words.length - 1;
      } else if (inSpan(bound, token.at)) add(token.at, token.text.length, 'enumMember');
    }
  }
  return [...pieces.values()].sort((a, b) => a.at - b.at);
}

const inSpan = (bound: Bound, at: number): boolean =>
  Object.values(bound.spans).some((span) => span.from <= at && at < span.to);

function wordType({ word, item, place }: Bound): TokenType {
  if (place === 'record' && word!.block === 'answer') return 'label';
  if (place === 'circuit' && kindNamed(item.word!.text)) return 'class';
  return 'verb' in word! && word.block !== 'steps' ? 'function' : 'keyword';
}
