import type { Item, SyntaxFault, Token, Tree } from '../../grammar/tree';
import type { Finding } from './finding';
import { type Bound, repeatedOnce } from './plan/bind';
import { faultFinding, wordSpan } from './plan/gather';
import type { TermFault } from './plan/term';
import { isProblem, readLiteral } from './quantity';

/**
 * Findings of the text itself and of its words, which no plan is needed for. Those of a statement are remembered by the
 * statement, so that an edit gathers anew only along its own spine. There may be very many: none is handed on as arguments.
 */

const ofItems = new WeakMap<Item, readonly Finding[]>();
const ofBounds = new WeakMap<Bound, readonly Finding[]>();
const none: readonly Finding[] = [];

export function syntaxFindings(tree: Tree, file: string): readonly Finding[] {
  const found: Finding[] = [];
  for (const item of tree.items) for (const each of ofItem(item, file)) found.push(each);
  return found;
}

function ofItem(item: Item, file: string): readonly Finding[] {
  const known = ofItems.get(item);
  if (known && (known.length === 0 || known[0]!.at.file === file)) return known;
  let found: Finding[] | null = null;
  for (const each of item.faults) {
    found ??= [];
    const fault = item.kind === 'statement' ? bracketed(item.terms, each) : each;
    if (!fault) continue;
    const sign = item.kind === 'statement' ? signOfUnit(item.terms, fault) : null;
    const at = { file, item, from: sign?.from ?? fault.from, to: sign?.to ?? fault.to };
    found.push({
      name: fault.name,
      severity: 'error',
      message: sign?.message ?? fault.message,
      at,
      related: [],
      fixes: (sign?.instead ?? []).map((text) => ({ title: `Write "${text}"`, safe: false, edits: [{ at, text }] })),
    });
  }
  if (item.kind === 'statement' && item.block) {
    for (const each of item.block.items) {
      for (const inner of ofItem(each, file)) (found ??= []).push(inner);
    }
  }
  ofItems.set(item, found ?? none);
  return found ?? none;
}

/** A remark in brackets is told once, from the first bracket to the last; null for the bracket that closes it. */
function bracketed(tokens: readonly Token[], fault: SyntaxFault): SyntaxFault | null {
  if (fault.name !== 'unreadable-text') return fault;
  const at = tokens.findIndex((token) => token.at === fault.from);
  const [token] = at < 0 ? [] : [tokens[at]!];
  if (!token || !/[()]/.test(token.text)) return fault;
  const opens = (each: Token): boolean => each.kind === 'error' && each.text.includes('(');
  const closes = (each: Token): boolean => each.kind === 'error' && each.text.includes(')');
  if (closes(token) && !opens(token)) return tokens.slice(0, at).some(opens) ? null : fault;
  const last = tokens.slice(at).find(closes);
  if (!last) return fault;
  const message = 'Brackets have no meaning here: a remark stands behind # at the end of the line, or in a note.';
  return { ...fault, message, to: end(last) };
}

/**
 * A sign behind a number that is meant for a unit (`50'`, `7/8"`, `36 kBtu/h`): the number with it, and what to write instead.
 * Null where the characters have no such sense.
 */
function signOfUnit(tokens: readonly Token[], fault: SyntaxFault): TermFault | null {
  const at = tokens.findIndex((token) => token.at === fault.from);
  const quote = fault.name === 'unclosed-quote';
  if (at < 1 || (fault.name !== 'unreadable-text' && !quote)) return null;
  let first = at - 1;
  while (first > 0 && tokens[first]!.kind === 'word' && tokens[first]!.at <= end(tokens[first - 1]!) + 1) first--;
  const number = tokens[first]!;
  if (number.kind !== 'number' || end(tokens[at - 1]!) !== tokens[at]!.at) return null;
  let last = at;
  while (!quote && tokens[last + 1] && tokens[last + 1]!.at === end(tokens[last]!)) last++;
  const to = quote ? tokens[at]!.at + 1 : end(tokens[last]!);
  let text = '';
  for (const token of tokens.slice(first, last + 1))
    text += ' '.repeat(Math.max(0, token.at - number.at - text.length)) + token.text;
  const literal = readLiteral(text.slice(0, to - number.at));
  if (!isProblem(literal) || literal.suggestions.length === 0) return null;
  return { name: fault.name, message: literal.message, from: number.at, to, instead: literal.suggestions };
}

const end = (token: Token): number => token.at + token.text.length;

export function wordFindings(statements: readonly Bound[], file: string): readonly Finding[] {
  const found: Finding[] = [];
  for (const bound of statements) for (const each of ofBound(bound, file)) found.push(each);
  return found;
}

function ofBound(bound: Bound, file: string): readonly Finding[] {
  const known = ofBounds.get(bound);
  if (known && (known.length === 0 || known[0]!.at.file === file)) return known;
  let found: Finding[] | null = null;
  for (const fault of bound.faults) (found ??= []).push(faultFinding(fault, bound, file));
  for (const { again, first } of repeatedOnce(bound.block)) {
    (found ??= []).push({
      name: 'said-twice',
      severity: 'error',
      message: `"${again.word!.word}" stands twice in this block.`,
      at: { file, item: again.item, ...wordSpan(again) },
      related: [{ at: { file, item: first.item, ...wordSpan(first) }, message: 'the first one' }],
      fixes: [],
    });
  }
  for (const each of bound.block) {
    for (const inner of ofBound(each, file)) (found ??= []).push(inner);
  }
  ofBounds.set(bound, found ?? none);
  return found ?? none;
}
