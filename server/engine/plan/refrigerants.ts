import { refrigerantNames, whyLeftOut } from '../properties';
import { nearest } from '../quantity';
import { factsOf, refrigerantFacts } from '../reference/refrigerant-facts';

/** Every refrigerant that tables or lists know, as a plan writes it. */
export const knownRefrigerants: ReadonlySet<string> = new Set([
  ...refrigerantNames,
  ...refrigerantFacts.map((each) => each.name),
]);

export const isRefrigerant = (name: string): boolean => knownRefrigerants.has(name);

/** What was most likely meant: `R22`, `r-22` and `22` all mean R-22; undefined where nothing is near. */
export const meantRefrigerant = (name: string): string | undefined =>
  factsOf(name)?.name ?? nearest(name, knownRefrigerants);

/** Why a name is none that a plan can use, as a sentence. */
export function whyNoRefrigerant(name: string, shown: string): string {
  const why = whyLeftOut(name.trim());
  if (why !== undefined) return `${shown} has no property tables (${why}): nothing can be computed for it.`;
  const near = meantRefrigerant(name);
  return `There is no refrigerant "${shown}"${near ? `; the nearest is "${near}"` : ''}.`;
}
