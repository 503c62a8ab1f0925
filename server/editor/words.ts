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

/** A word's page in Markdown: its form, its meaning, an example. */
export function wordPage(word: Word): string {
  const clauses = formText(word)
    .parts.map(slotLine)
    .filter((line) => line !== undefined);
  return [
    ['```jobplan', formText(word).text, '```'].join('\n'),
    word.meaning,
    ...(clauses.length > 0 ? [clauses.join('\n')] : []),
    `Example: \`${word.example}\``,
  ].join('\n\n');
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
