import { exampleText } from '../engine/checks/bases';
import type { Example } from '../engine/checks/define';
import type { Page } from '../engine/checks/page';
import { kinds } from '../engine/circuit/kinds';
import { formText } from '../engine/plan/form-text';
import type { Word } from '../engine/plan/vocabulary';
import type { AnyRelation, Example as WorkedExample } from '../engine/takeoff/relation';
import { differentLines } from './difference';
import type { ManualPage } from './shapes/explain';

type Section = ManualPage['sections'][number];

const section = (heading: string, text: string): readonly Section[] => (text.trim() === '' ? [] : [{ heading, text }]);

const grounds = {
  law: 'law',
  published: 'published',
  practice: 'common practice',
  memory: 'from memory, to be checked',
} as const;

export const checkPage = (check: Page): ManualPage => ({
  kind: 'check',
  title: check.title,
  sections: [
    ...section('Severity', `${check.severity}${check.acceptable ? '' : '; cannot be accepted'}`),
    ...section('What it means', check.meaning),
    ...section('Why it matters', check.why),
    ...section('Way out', check.noFix ? `By hand. ${check.noFix}` : ''),
    ...section('Wrong', exampleLines(check.wrong)),
    ...section('Right', exampleLines(check.right)),
    ...section('Source', `${check.source} (${grounds[check.ground]})`),
  ],
});

/** The mark by which the tests know where the finding must stand. */
const unmarked = (text: string): string => text.replace(/ *# <- here/g, '');

/** What an example puts into its plan, and what it leaves out, without the plan around it. */
function exampleLines(example: Example): string {
  const { file, plan, steps, after } = example;
  const stated = [
    file,
    plan,
    steps === undefined ? undefined : `steps {\n${steps.replace(/^(?=.)/gm, '  ')}\n}`,
    after,
  ];
  const pieces = stated.filter((text) => text !== undefined).map(unmarked);
  if (example.instead) {
    // Of a plan that is altered here and there only the lines that differ are of interest.
    const [before, now] = [{ ...example, instead: [] }, example].map((each) => linesOf(unmarked(exampleText(each))));
    const { gone, come } = differentLines(before!, now!);
    pieces.push(...come, ...gone.map((line) => `(without: ${line})`));
  }
  return pieces.length === 0 ? '(the same plan, unaltered)' : pieces.join('\n');
}

const linesOf = (text: string): readonly string[] => text.split('\n').map((line) => line.trim());

export function wordPage(word: Word): ManualPage {
  const { text, parts } = formText(word);
  return {
    kind: 'word',
    title: word.meaning,
    sections: [
      ...section('How it is written', text),
      ...section('Where it stands', word.places.map((place) => place.replaceAll('-', ' ')).join(', ')),
      ...section(
        'Which parts have it',
        kinds
          .filter((kind) => word.ofParts?.includes(kind.group))
          .map((kind) => kind.kind)
          .join(', '),
      ),
      ...section('What it takes', parts.map((part) => `${part.text}: ${part.slot.meaning}`).join('\n')),
      ...section('Example', word.example),
    ],
  };
}

export const figurePage = (relation: AnyRelation): ManualPage => ({
  kind: 'figure',
  title: relation.title,
  sections: [
    ...section('Formula', relation.formula),
    ...section(
      'Inputs',
      Object.entries(relation.inputs)
        .map(([key, { title, from }]) => `${key}: ${title}, from ${from}`)
        .join('\n'),
    ),
    ...section('Holds for', relation.validity),
    ...section('Takes for granted', relation.assumptions.join('\n')),
    ...section('Example', relation.examples.slice(0, 1).map(worked).join('\n')),
    ...section('Sources', `${relation.sources.join('\n')}\n(${relation.confidence})`),
  ],
});

const worked = ({ inputs, expect, source }: WorkedExample): string =>
  `${Object.entries(inputs)
    .map(([key, value]) => `${key} ${[value].flat().join(', ')}`)
    .join('; ')} gives ${expect} (${source})`;
