import { checks } from '../../engine/checks/all';
import { oilFamilies } from '../../engine/plan/assemble';
import { firstLine } from '../../engine/plan/step';
import type { Reference } from '../../engine/plan/term';
import { refrigerantNames } from '../../engine/properties';
import { refrigerantFacts } from '../../engine/reference/refrigerant-facts';
import { checkPage } from '../check-page';
import { refrigerantPage } from '../hover/name';
import { declared, labelsOf, partsOf, stepsAround, stockOf } from '../names';
import type { Proposal, Setting } from './proposal';

/** Names that a reference may mean at this place. */
export function nameProposals(here: Setting, refers: Reference, rank: number): readonly Proposal[] {
  const top = here.blocks[0];
  const named = (label: string, detail: string, page?: string): Proposal => ({
    label,
    kind: 'name',
    detail,
    rank,
    ...(page ? { page } : {}),
  });
  switch (refers) {
    case 'part':
    case 'place-in-circuit':
      if (top === undefined || here.blocks.at(-1)?.word?.block === 'answer') return [];
      return [...partsOf(top, here.path).values()].map(([part]) => named(part!.text, firstLine(part!.bound)));
    case 'label':
      if (top === undefined) return [];
      return stepsAround(here.snapshot, here.path, top)
        .flatMap(({ bound, file }) => [...labelsOf(bound, file).values()].flat())
        .map((label) => named(label.text, firstLine(label.bound)));
    case 'refrigerant':
      return refrigerants.map((name) => named(name, factsLine(name), refrigerantPage(name)));
    case 'oil':
      return [...oilFamilies.map((family) => named(family, 'oil')), ...declarations(here, refers, rank)];
    case 'check':
      return checks
        .filter((check) => check.acceptable)
        .map((check) => named(check.name, check.title, checkPage(check.name)));
    case 'stock': {
      const own = top
        ? [...stockOf(top, here.path).values()].map(([each]) => named(each!.text, firstLine(each!.bound)))
        : [];
      return [...own, named('container', 'any container'), ...declarations(here, refers, rank + 1)];
    }
    case 'parameter':
      return (top?.block ?? []).flatMap((each): Proposal[] => {
        const what = each.word?.word === 'needs' ? (each.values['what'] as { text: string } | undefined) : undefined;
        if (what) return [named(what.text, 'stated by the job')];
        return each.word?.word === 'test-pressure' ? [named(each.word.word, firstLine(each))] : [];
      });
    default:
      return declarations(here, refers, rank);
  }
}

const refrigerants = [...new Set([...refrigerantFacts.map((each) => each.name), ...refrigerantNames])];
const factsLine = (name: string): string =>
  refrigerantFacts.find((each) => each.name === name)?.safetyClass ?? 'refrigerant';

const declarations = (here: Setting, refers: Reference, rank: number): readonly Proposal[] =>
  declared(here.snapshot, here.path, refers).map((each) => ({
    label: each.name,
    kind: 'name',
    detail: each.title ?? each.kind,
    page: `\`${firstLine(each.bound)}\`\n\n*${each.file}*`,
    rank,
  }));
