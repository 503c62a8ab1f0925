import { isNeeded, slotText } from '../../engine/plan/form-text';
import type { Term } from '../../engine/plan/terms';
import { isPositional, type Slot, type Word } from '../../engine/plan/vocabulary';

const escaped = (text: string): string => text.replace(/[\\$}]/g, '\\$&');
const escapedChoice = (text: string): string => text.replace(/[\\$},|]/g, '\\$&');

/** Numbers the places of one snippet through. */
export class Places {
  private next = 1;

  /** A place for a term, with an example or the choices in it. */
  of(term: Term): string {
    const number = this.next++;
    if (term.type === 'choice' && term.choices && term.choices.length > 1)
      return `\${${number}|${term.choices.map(escapedChoice).join(',')}|}`;
    if (term.type === 'text') return `"\${${number}}"`;
    // What must be typed anyway is shown as an example; a name is chosen from the list that opens.
    if (term.example !== undefined && term.type !== 'name' && term.type !== 'selection')
      return `\${${number}:${escaped(term.example)}}`;
    return `\${${number}}`;
  }
}

/** The text that completion inserts for a word: what its form needs, and its block. */
export function wordSnippet(word: Word): string {
  if (word.snippet !== undefined) return word.snippet;
  const places = new Places();
  const terms = Object.values(word.form)
    .filter(isNeeded)
    .map((slot) => slotSnippet(slot, places));
  const line = [word.word, ...terms].join(' ');
  return word.blockNeeded ? `${line} {\n\t$0\n}` : line;
}

export function slotSnippet(slot: Slot, places = new Places()): string {
  if (isPositional(slot)) return places.of(slot.term);
  return slot.term === null ? slot.key : `${slot.key} ${places.of(slot.term)}`;
}

/** A snippet without its places, for a client that takes plain text only: the word or the key alone. */
export const slotPlain = (slot: Slot): string => {
  if (isPositional(slot)) return slotText(slot);
  return slot.term === null ? slot.key : `${slot.key} `;
};
