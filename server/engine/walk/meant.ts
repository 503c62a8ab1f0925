import type { Graph } from '../circuit/graph';
import { kindNamed, kindOfPlural } from '../circuit/kinds';
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
