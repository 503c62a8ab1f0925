import { type Run, type Sentence, sentence, words } from '../sentence';

/** "a, b and c". */
export const listed = (names: readonly string[], last = 'and'): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} ${last} ${names.at(-1)}`;

/** The same of pieces of a sentence. */
export function listedRuns(pieces: readonly Sentence[], last = 'and'): Sentence {
  return pieces.flatMap((piece, k): Run[] => {
    if (k === 0) return [...piece];
    return [words(k === pieces.length - 1 ? ` ${last} ` : ', '), ...piece];
  });
}

/** Pieces with a mark between them; empty ones are left out. */
export function joined(pieces: readonly Sentence[], between = '; '): Sentence {
  return pieces
    .filter((piece) => piece.length > 0)
    .flatMap((piece, k): Run[] => (k === 0 ? [...piece] : [words(between), ...piece]));
}

export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words of the plan as people write them: `door-alarms` is door alarms. Names that the plan declares stay as they are. */
export const unhyphened = (text: string, isName: (word: string) => boolean): string =>
  text.replace(/[a-z]+(?:-[a-z]+)+/g, (word) => (isName(word) ? word : word.replaceAll('-', ' ')));

export const empty: Sentence = sentence();
