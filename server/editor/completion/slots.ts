import type { Token } from '../../../grammar/tree';
import type { Expected, NamedSlot } from '../../engine/plan/expect';
import { isNeeded, slotText } from '../../engine/plan/form-text';
import { isPositional, type Word } from '../../engine/plan/vocabulary';
import { units } from '../../engine/quantity';
import { exampleOf } from './examples';
import { nameProposals } from './names';
import type { Proposal, Setting } from './proposal';
import { isNarrowing, selectionProposals } from './selections';
import { slotPlain, slotSnippet } from './snippet';

/** What may follow in a statement's line. What must stand next comes first, then clauses as the form has them. */
export function slotProposals(
  here: Setting,
  word: Word,
  expected: Expected,
  terms: readonly Token[],
): readonly Proposal[] {
  if (expected.unitOf) return unitProposals(here, word, expected.unitOf, terms.at(-1));
  const found: Proposal[] = begunProposals(here, word, expected, terms);
  if (expected.awaiting) return [...found, ...termProposals(here, word, expected.awaiting, [], 0)];
  if (expected.continuing) {
    found.push(...continuations(here, word, expected.continuing));
    // Behind "each" or "of" a name must follow; clauses come after it.
    if (isUnfinished(expected.continuing.tokens)) return unique(found);
  }
  let rank = 100;
  const wanted = expected.open.find(({ slot }) => isPositional(slot) && !slot.optional);
  for (const each of expected.open) {
    if (isPositional(each.slot)) found.push(...termProposals(here, word, each, [], rank));
    else if (wanted === undefined) found.push(clauseProposal(word, each, rank + (isNeeded(each.slot) ? 0 : 200)));
    rank += 10;
  }
  if (here.place !== 'change' && wanted === undefined)
    for (const each of expected.common) found.push(clauseProposal(word, each, rank++ + 500));
  return unique(found);
}

const isUnfinished = (tokens: readonly Token[]): boolean =>
  tokens.at(-1)?.text === 'of' || (tokens.length < 3 && isNarrowing(tokens.at(-1)?.text));

function unique(found: readonly Proposal[]): readonly Proposal[] {
  const seen = new Set<string>();
  const key = ({ label, detail, kind }: Proposal): string => (kind === 'clause' ? `${label} ${detail}` : label);
  return found.filter((each) => !seen.has(key(each)) && seen.add(key(each)));
}

function clauseProposal(word: Word, { name, slot }: NamedSlot, rank: number): Proposal {
  const key = isPositional(slot) ? slotText(slot) : slot.key;
  return {
    label: key,
    kind: 'clause',
    snippet: slotSnippet(word, name, slot),
    plain: slotPlain(slot),
    detail: slotText(slot).slice(key.length).trim(),
    page: `\`${slotText(slot)}\`: ${slot.meaning}.`,
    rank,
  };
}

/** Keys of several words of which the first are there: the whole key replaces them. */
function begunProposals(here: Setting, word: Word, expected: Expected, terms: readonly Token[]): Proposal[] {
  return expected.begun.map((each, rank) => ({
    ...clauseProposal(word, each, 20 + rank),
    from: here.start + (terms[terms.length - each.words]?.at ?? 0),
  }));
}

function continuations(
  here: Setting,
  word: Word,
  { slot, tokens }: NamedSlot & { readonly tokens: readonly Token[] },
): readonly Proposal[] {
  const term = slot.term!;
  if (term.type === 'selection') return selectionProposals(here, word, term, tokens, 50);
  if (term.type === 'choice' && term.choices) {
    // A choice of several words that has begun.
    const begun = tokens.map((token) => token.text).join(' ');
    return term.choices
      .filter((each) => each.startsWith(`${begun} `))
      .map((each, rank) => ({ label: each, kind: 'choice', rank: 50 + rank, from: here.start + tokens[0]!.at }));
  }
  // `95 lb R-22`: a second term that may stand behind the first.
  if (term.shape.endsWith(']') && term.refers) return nameProposals(here, term.refers, 50);
  return [];
}

/** What a term can be, from its beginning. */
export function termProposals(
  here: Setting,
  word: Word,
  { name, slot }: NamedSlot,
  tokens: readonly Token[],
  rank: number,
): readonly Proposal[] {
  const term = slot.term;
  if (!term) return [];
  const found: Proposal[] = [];
  if (term.type === 'selection') return selectionProposals(here, word, term, tokens, rank);
  for (const [k, each] of [...(term.choices ?? []), ...(term.usual ?? [])].entries())
    found.push({ label: each, kind: 'choice', detail: slot.meaning, rank: rank + k / 100 });
  if (term.refers) found.push(...nameProposals(here, term.refers, rank));
  const example = term.type === 'text' ? '"…"' : exampleOf(word, name, slot);
  if (example !== undefined)
    found.push({
      label: example,
      kind: 'value',
      snippet: slotSnippet(word, name, isPositional(slot) ? slot : { position: true, term, meaning: slot.meaning }),
      plain: example,
      detail: slot.meaning,
      page: `${slot.meaning}. Written as \`${example}\`.`,
      rank: rank + 5,
    });
  return found;
}

/** Units of the kind that a bare number wants, the term's own system first. */
function unitProposals(
  here: Setting,
  word: Word,
  { name, slot }: NamedSlot,
  number: Token | undefined,
): readonly Proposal[] {
  const kind = slot.term?.kind;
  if (kind === undefined || number === undefined) return [];
  const example = exampleOf(word, name, slot)?.replace(/^[^a-zA-Z%°Δ]+/, '');
  const glued = here.from === here.start + number.at + number.text.length ? ' ' : '';
  return units
    .filter((unit) => unit.kinds.includes(kind))
    .map((unit, place) => ({
      label: unit.name,
      kind: 'unit' as const,
      snippet: glued + unit.name.replace(/[$}\\]/g, '\\$&'),
      plain: glued + unit.name,
      filter: glued + unit.name,
      detail: kind.replaceAll('-', ' '),
      rank: unit.name === example ? 0 : (unit.system === 'si' ? 100 : 1) + place,
      ...(unit.example ? { page: `Such as \`${unit.example}\`.` } : {}),
    }));
}
