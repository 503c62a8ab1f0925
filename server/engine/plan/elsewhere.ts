import type { Token } from '../../../grammar/tree';
import { keys } from './read-terms';
import { end, type TermFault } from './term';
import { isPositional, type Place, type Slot, type Vocabulary, type Word } from './vocabulary';

/** Clauses that a message names: more is a manual. */
const mostNamed = 6;

/** A fault of a term that cannot stand there, with the nearest place where it can. */
export function withPlace(
  fault: TermFault,
  vocabulary: Vocabulary,
  place: Place,
  word: Word,
  tokens: readonly Token[],
): TermFault {
  if (fault.name !== 'unexpected-term' || fault.instead.length > 0 || !fault.message.endsWith('cannot stand here.'))
    return fault;
  const told = tokens.filter((token) => fault.from <= token.at && end(token) <= fault.to);
  const first = told.find((token) => token.kind === 'word')?.text;
  const hint = (first === undefined ? null : placeOf(vocabulary, place, word, first)) ?? whatCan(vocabulary, word);
  return hint === null ? fault : { ...fault, message: `${fault.message} ${hint}` };
}

/** Where a word can stand: in the block of this line, as a line beside it, in another line, in another block. */
function placeOf(vocabulary: Vocabulary, place: Place, word: Word, text: string): string | null {
  const inside = word.block ? vocabulary.at(word.block).get(text) : undefined;
  if (inside) return `It is a line of its own in the block: ${word.word} … { ${inside.example} }.`;
  const beside = vocabulary.at(place).get(text);
  if (beside) return `It is a line of its own: ${beside.example}.`;
  const others = [...vocabulary.at(place).values()].filter((each) => clauseOf(each, text));
  if (others.length > 0)
    return `It goes with ${listed(others.slice(0, mostNamed).map((each) => `"${each.word}"`))}, as in: ${exampleWith(others, text)}.`;
  const [elsewhere] = vocabulary.anywhere(text);
  if (!elsewhere) return null;
  const places = elsewhere.places.map((each) => (each === 'file' ? 'the file itself' : `a ${each} block`));
  return `It belongs in ${listed(places.slice(0, mostNamed))}: ${elsewhere.example}.`;
}

const clauseOf = (word: Word, text: string): boolean => keys(word.form).some((key) => key.words[0] === text);

const exampleWith = (words: readonly Word[], text: string): string =>
  (words.find((each) => each.example.split(/[\s,]+/).includes(text)) ?? words[0]!).example;

/** What this line takes, where nothing is known of the word. */
function whatCan({ common }: Vocabulary, { word, form }: Word): string | null {
  const named = Object.values(form as Record<string, Slot>).flatMap((slot) =>
    isPositional(slot) ? [] : [slot.term ? `${slot.key} …` : slot.key],
  );
  const also = Object.values(common).flatMap((slot) => (isPositional(slot) ? [] : [`${slot.key} …`]));
  return `"${word}" takes ${listed([...named.slice(0, mostNamed), ...also])}; a remark stands behind #.`;
}

const listed = (all: readonly string[]): string =>
  all.length > 1 ? `${all.slice(0, -1).join(', ')} or ${all.at(-1)}` : (all[0] ?? '');
