import type { Graph } from '../circuit/graph';
import { kindNamed, kindOfPlural } from '../circuit/kinds';
import { type Standing, standings } from '../plan/selection';
import { editDistance, isSlip } from '../quantity';

/** Words that mean many parts at once. */
const wide = ['system', 'line', 'lines', 'part', 'parts', 'equipment'];

/**
 * The name that a misspelt one can only mean. The misspelling is told at its place; what follows is judged as if it had been
 * written right, so that one slip of the keys is one finding. Null where two names are as near, or the noun is a word of
 * its own: a kind that this circuit lacks.
 */
export function meantNoun(graph: Graph, noun: string): string | null {
  if (kindNamed(noun) || kindOfPlural(noun)) return null;
  const kinds = graph.parts.flatMap(({ kind }) => [kind.kind, `${kind.kind}s`]);
  const near = [...new Set([...graph.named.keys(), ...kinds, ...wide])].filter((name) => isSlip(noun, name));
  const slips = (name: string): number => editDistance(noun.toLowerCase(), name.toLowerCase());
  const least = Math.min(...near.map(slips));
  const nearest = near.filter((name) => slips(name) === least);
  return nearest.length === 1 ? nearest[0]! : null;
}

/** What a noun of several words was meant to be, and the words of it that nobody understands. */
export interface MeantPhrase {
  readonly nouns: readonly string[];
  readonly standing: Standing | null;
  readonly strange: readonly string[];
}

/**
 * The parts in a noun with words too many (`equipment with care`) or with a comma too few (`valve-as valve-ad`). The words are
 * told at their place; the step is done to what it names. Null where it names nothing of the circuit.
 */
export function meantPhrase(noun: string, known: (noun: string) => boolean): MeantPhrase | null {
  const words = noun.split(' ');
  if (words.length < 2 || words.length > mostWords) return null;
  const nouns = words.filter((word) => known(word));
  if (nouns.length === 0) return null;
  const at = words.indexOf(nouns[0]!);
  const standing = words.slice(0, at).find((word): word is Standing => standings.some((each) => each === word));
  const strange = words.filter((word) => !known(word) && word !== standing && word !== 'each');
  // Two names with something between them may be anything.
  return nouns.length > 1 && strange.length > 0 ? null : { nouns, standing: standing ?? null, strange };
}
const mostWords = 12;
