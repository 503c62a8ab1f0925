import { kindNamed } from '../../engine/circuit/kinds';
import { formText } from '../../engine/plan/form-text';
import type { Place, Word } from '../../engine/plan/vocabulary';
import { vocabulary } from '../../engine/vocabulary';
import { labelsOf, stepsAround } from '../names';
import { wordPage } from '../words';
import type { Proposal, Setting } from './proposal';
import { wordSnippet } from './snippet';

/** The words of a place, in the vocabulary's order; left out are those that may stand once and do, and what the part has not. */
export function wordProposals(here: Setting, place: Place): readonly Proposal[] {
  const siblings = here.blocks.at(-1)?.block ?? here.file.statements;
  const there = new Set(
    siblings.filter((each) => each.word?.once && each.item !== here.statement).map((each) => each.word),
  );
  const owner = kindNamed(here.blocks.at(-1)?.word?.word ?? '');
  return [...vocabulary.at(place).values()]
    .filter((word) => !there.has(word))
    .filter((word) => !word.ofParts || !owner || word.ofParts.includes(owner.group))
    .map((word, rank) => proposalOf(word, rank + (place === 'steps' && !('verb' in word) ? 300 : 0)));
}

/** What a word proposes does not hang on where it is asked for; made once. */
const made = new WeakMap<Word, Omit<Proposal, 'rank'>>();

function proposalOf(word: Word, rank: number): Proposal {
  let known = made.get(word);
  if (!known) {
    const kind = 'verb' in word ? 'verb' : kindNamed(word.word) ? 'part-kind' : 'word';
    known = {
      label: word.word,
      kind,
      snippet: wordSnippet(word),
      plain: word.word,
      detail: formText(word).text.slice(word.word.length).trim(),
      page: wordPage(word),
    };
    made.set(word, known);
  }
  return { ...known, rank };
}

/** In a record: the labelled steps that have no answer yet. */
export function answerProposals(here: Setting): readonly Proposal[] {
  const top = here.blocks[0];
  if (top === undefined) return [];
  const answered = new Set(top.block.map((each) => each.item.word?.text));
  const labels = stepsAround(here.snapshot, here.path, top).flatMap(({ bound, file }) =>
    [...labelsOf(bound, file).values()].flat(),
  );
  return labels
    .filter((label) => !answered.has(label.text))
    .map((label, place) => ({
      label: label.text,
      kind: 'name',
      snippet: `${label.text} {\n\tdone \${1:08:05}\n}`,
      plain: label.text,
      detail: 'answer',
      rank: 100 + place,
    }));
}
