import { readTerms } from '../../engine/plan/read-terms';
import type { Amount } from '../../engine/plan/term';
import type { Slot, Word } from '../../engine/plan/vocabulary';
import { vocabulary } from '../../engine/vocabulary';
import { theGrammar } from '../../engine/workspace';

const made = new WeakMap<Word, ReadonlyMap<string, string>>();

/** The quantities of a word's own example by slot, as written there: `to 500 micron` of `evacuate` gives "500 micron". */
function examplesOf(word: Word): ReadonlyMap<string, string> {
  let known = made.get(word);
  if (!known) {
    const found = new Map<string, string>();
    const [item] = theGrammar().parse(`${word.example}\n`).items;
    if (item?.kind === 'statement' && item.word) {
      const { values } = readTerms(word.form, vocabulary.common, item.terms, { from: 0, to: item.length }, true);
      for (const [slot, value] of Object.entries(values)) {
        const literal = (value as Amount | undefined)?.literal;
        if (literal) found.set(slot, literal.text.trim());
      }
    }
    made.set(word, (known = found));
  }
  return known;
}

/** What a slot of a word looks like when it is written; undefined for what is chosen from a list. */
export const exampleOf = (word: Word, name: string, slot: Slot): string | undefined => {
  const term = slot.term;
  if (term === null || term.type === 'name' || term.type === 'selection' || term.type === 'choice') return undefined;
  return examplesOf(word).get(name) ?? term.example;
};
