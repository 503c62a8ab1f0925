import type { Example } from '../engine/checks/define';
import type { Page } from '../engine/checks/pages';
import { formText } from '../engine/plan/form-text';
import type { Word } from '../engine/plan/vocabulary';
import type { AnyRelation, Example as WorkedExample } from '../engine/takeoff/relation';
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
    ...section('Wrong', exampleLines(check.wrong)),
    ...section('Right', exampleLines(check.right)),
    ...section('Source', `${check.source} (${grounds[check.ground]})`),
  ],
});

/** What an example puts into its plan, without the plan around it and without the mark that the tests look for. */
const exampleLines = ({ file, plan, steps, after, instead }: Example): string =>
  [
    file,
    plan,
    steps === undefined ? undefined : `steps {\n${steps.replace(/^(?=.)/gm, '  ')}\n}`,
    after,
    ...(instead ?? []).map(([text, by]) =>
      by.trim() === '' ? `(without: ${text.trim()})` : `${by.trim()}\n(instead of: ${text.trim()})`,
    ),
  ]
    .filter((text) => text !== undefined)
    .join('\n\n')
    .replace(/ *# <- here$/gm, '');

export function wordPage(word: Word): ManualPage {
  const { text, parts } = formText(word);
  return {
    kind: 'word',
    title: word.meaning,
    sections: [
      ...section('How it is written', text),
      ...section('Where it stands', word.places.map((place) => place.replaceAll('-', ' ')).join(', ')),
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
