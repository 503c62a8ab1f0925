import { type FormPart, formText } from '../engine/plan/form-text';
import { isPositional, type Place, type Word } from '../engine/plan/vocabulary';

/** How people call a place of the language. */
export const placeName = (place: Place): string =>
  place === 'file'
    ? 'the file itself'
    : place === 'step'
      ? "a step's block"
      : place === 'part'
        ? "a part's block"
        : `\`${place} { … }\``;

/** A word's page in Markdown: its form, its meaning, its clauses, an example. */
export const wordPage = (word: Word): string => `${wordHead(word)}\n\n${wordRest(word)}`;

/** The form and the meaning of a word. */
export const wordHead = (word: Word): string => `\`\`\`jobplan\n${formText(word).text}\n\`\`\`\n\n${word.meaning}`;

/** What its clauses are for, and an example. */
export function wordRest(word: Word): string {
  const clauses = formText(word)
    .parts.map(slotLine)
    .filter((line) => line !== undefined);
  return [...(clauses.length > 0 ? [clauses.join('\n')] : []), `Example: \`${word.example}\``].join('\n\n');
}

const slotLine = ({ slot, text }: FormPart): string => `- \`${text}\`: ${slot.meaning}`;

/** One slot in Markdown. */
export function slotPage({ slot, text }: FormPart): string {
  const example = slot.term?.example;
  return [
    `\`${text}\`: ${slot.meaning}.`,
    ...(example ? [`Such as \`${isPositional(slot) ? example : `${slot.key} ${example}`}\`.`] : []),
  ].join('\n\n');
}
