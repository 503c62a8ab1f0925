import type { Token } from '../../../grammar/tree';
import { kinds } from '../../engine/circuit/kinds';
import { standings } from '../../engine/plan/selection';
import type { Term } from '../../engine/plan/term';
import type { Word } from '../../engine/plan/vocabulary';
import { partsOf } from '../names';
import { nameProposals } from './names';
import type { Proposal, Setting } from './proposal';

const groupNouns: Readonly<Record<string, string>> = {
  line: 'every line of the circuit',
  part: 'every part',
  equipment: 'compressors, coils, valves of the machine',
};

/** What a selection of parts can be, or how it can go on: `each`, `kept`, names, kinds, groups. */
export function selectionProposals(
  here: Setting,
  word: Word,
  term: Term,
  tokens: readonly Token[],
  rank: number,
): readonly Proposal[] {
  const last = tokens.at(-1)?.text;
  const begun = tokens.map((token) => token.text).join(' ');
  const proposal = (label: string, place: number, detail: string, kind: Proposal['kind'] = 'choice'): Proposal => ({
    label,
    kind,
    detail,
    rank: rank + place,
  });
  if (last === 'of') return nameProposals(here, 'part', rank);
  const narrowed = isNarrowing(last);
  if (tokens.length > 0 && !narrowed) {
    // The nouns of two words that have begun; else the selection may go on with a comma, which needs no proposal.
    return (term.choices ?? [])
      .filter((each) => each.startsWith(`${begun} `))
      .map((each) => ({ ...proposal(each, 0, word.word), from: here.start + tokens[0]!.at }));
  }
  const found: Proposal[] = [];
  if (last === undefined) {
    for (const each of term.choices ?? []) found.push(proposal(each, 0, 'everything of the kind'));
    found.push(...nameProposals(here, 'part', rank + 1));
    found.push(proposal('each', 2, 'one after the other'));
  }
  if (last === undefined || last === 'each')
    for (const each of standings) found.push(proposal(each, 3, 'narrows it down'));
  for (const [noun, detail] of Object.entries(groupNouns))
    if (narrowed || noun === 'equipment') found.push(proposal(noun, 1, detail));
  found.push(...kindNouns(here).map((each) => proposal(each, 4, 'kind of part', 'part-kind')));
  return found;
}

/** Words that want a noun behind them. */
export const isNarrowing = (text: string | undefined): boolean =>
  text === 'each' || standings.some((each) => each === text);

/** Kinds that the plan's circuit has; in a standard, which has none, all of them. */
function kindNouns(here: Setting): readonly string[] {
  const top = here.blocks[0];
  const own =
    top?.word?.word === 'plan'
      ? new Set([...partsOf(top, here.path).values()].flat().map((each) => each.bound.word?.word))
      : undefined;
  return kinds.filter((each) => own === undefined || own.has(each.kind)).map((each) => each.kind);
}
