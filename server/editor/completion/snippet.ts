import { isNeeded, slotText } from '../../engine/plan/form-text';
import type { Term } from '../../engine/plan/term';
import { isPositional, type Slot, type Word } from '../../engine/plan/vocabulary';
import { exampleOf } from './examples';

const escaped = (text: string): string => text.replace(/[\\$}]/g, '\\$&');
const escapedChoice = (text: string): string => text.replace(/[\\$},|]/g, '\\$&');

/** Numbers the places of one snippet through. */
class Places {
  private next = 1;

  /** A place for a term, with an example or the choices in it; a name is chosen from the list that opens. */
  of(term: Term, example: string | undefined): string {
    const number = this.next++;
    if (term.type === 'choice' && term.choices && term.choices.length > 1)
      return `\${${number}|${term.choices.map(escapedChoice).join(',')}|}`;
    if (term.type === 'text') return `"\${${number}}"`;
    return example === undefined ? `\${${number}}` : `\${${number}:${escaped(example)}}`;
  }
}

/** The text that completion inserts for a word: what its form needs, and its block. */
export function wordSnippet(word: Word): string {
  if (word.snippet !== undefined) return word.snippet;
  const places = new Places();
  const needed = Object.entries(word.form).filter(([, slot]) => isNeeded(slot));
  const line = [word.word, ...needed.map(([name, slot]) => slotSnippet(word, name, slot, places))].join(' ');
  return word.blockNeeded ? `${line} {\n\t$0\n}` : line;
}

/** The text that completion inserts for one slot of a word. */
export function slotSnippet(word: Word, name: string, slot: Slot, places = new Places()): string {
  const example = exampleOf(word, name, slot);
  if (isPositional(slot)) return places.of(slot.term, example);
  return slot.term === null ? slot.key : `${slot.key} ${places.of(slot.term, example)}`;
}

/** A snippet without its places, for a client that takes plain text only: the word or the key alone. */
export const slotPlain = (slot: Slot): string => {
  if (isPositional(slot)) return slotText(slot);
  return slot.term === null ? slot.key : `${slot.key} `;
};
