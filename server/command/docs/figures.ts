import { type Kind, kindInWords, show } from '../../engine/quantity';
import type { Confidence } from '../../engine/takeoff/figure';
import type { AnyRelation, Example } from '../../engine/takeoff/relation';
import type { InputSpec } from '../../engine/takeoff/spec';
import type { Disagreement } from './disagreements';
import { citedIn, handbookSources } from './handbook-sources';
import type { PropertyError } from './property-errors';
import { refrigerantChapters } from './refrigerants';
import { rows, sure } from './table';

/** The groups of what the engine computes, by number from 1. */
const groups: readonly string[] = [
  'Tube: bore, volume, area, mass',
  'Tube: working pressure',
  'Saturation',
  'Recovery',
  'Solvent',
  'Nitrogen',
  'Oxygen in the work space',
  'Pressure test',
  'Evacuation',
  'Charge',
  'Superheat and subcooling',
  'Old oil left',
  'Lines with the new refrigerant',
  'Limits of rooms',
  'What a change of refrigerant does',
  'Oil',
  'Balance for the record',
  'Time',
];

/** `docs/figures.md`: every relation with what it rests on, how well the properties agree, and what was settled how. */
export function figuresReference(
  relations: readonly AnyRelation[],
  errors: readonly PropertyError[],
  disagreements: readonly Disagreement[],
): string {
  return [
    '# The figures',
    'Made from the relations by `npm run docs`; a test compares the two. Every relation is one file in `server/engine/takeoff/figures`; `jobplan figure NAME` computes it, and its workings are printed with the sheet. “Handbook” is the collection of figures that the project was begun with, each with its public source; its worked examples are called WE-1 and so on.',
    summary(relations),
    '## How well the properties agree',
    'Against values straight from the reference library (CoolProp 8.0.0), at random states over the working range. Independent of that library, published boiling points and saturation tables stand in `tests/engine/properties/outside-world.test.ts`, each with its source.',
    errorsTable(errors),
    '## Where sources disagree',
    disagreementsTable(disagreements),
    ...refrigerantChapters(),
    '## Documents behind the handbook',
    'Numbers in square brackets behind a check are those of this list. Excerpts were seen, not whole documents; of those marked † the copy seen is no authority, and what rests on it alone counts as common practice. What has no number is computed by hand, common practice, or from memory, and says so.',
    documents(relations),
    '## What rests on memory or on practice',
    weakList(relations),
    ...groups.flatMap((title, index) => group(relations, index + 1, title)),
  ]
    .join('\n\n')
    .concat('\n');
}

function summary(relations: readonly AnyRelation[]): string {
  const examples = relations.flatMap((one) => one.examples);
  const sources = new Set(relations.flatMap((one) => one.sources));
  const count = (confidence: Confidence): number => relations.filter((one) => one.confidence === confidence).length;
  return `${relations.length} relations, ${sources.size} sources, ${examples.length} outside checks. At their own best ${count('published')} are published, ${count('computed')} computed from first principles, ${count('practice')} common practice, ${count('memory')} from memory; a figure is never surer than what goes into it.`;
}

function errorsTable(errors: readonly PropertyError[]): string {
  const at = ({ T, p }: PropertyError['input']): string =>
    [T === undefined ? '' : `${T.toFixed(1)} K`, p === undefined ? '' : `${(p / 1000).toFixed(1)} kPa`]
      .filter(Boolean)
      .join(', ');
  const size = (value: number, unit: string | null): string =>
    unit === null ? `${Number((value * 100).toPrecision(2))} %` : `${Number(value.toPrecision(2))} ${unit}`;
  return rows(
    ['property', 'values', 'worst error', 'at', 'allowed'],
    errors.map((each) => [
      each.property,
      String(each.values),
      size(each.worst, each.unit),
      `${each.fluid}, ${at(each.input)}`,
      size(each.allowed, each.unit),
    ]),
  );
}

const disagreementsTable = (all: readonly Disagreement[]): string =>
  rows(
    ['about', 'sources', 'chosen', 'why'],
    all.map((each) => [each.about, each.sources.join('; '), each.chosen, each.why]),
  );

/** Whether an expectation comes from outside the project: not from a calculation by hand alone, nor from a limit. */
export const isOutside = (source: string): boolean =>
  !/^(by hand|limit|by the calendar)/.test(source) || /handbook|CFR|printed|published|CoolProp/.test(source);

/** Every document that a figure of the handbook came from, with the relations that are checked against it. */
function documents(relations: readonly AnyRelation[]): string {
  const checkedBy = new Map<number, Set<string>>();
  for (const one of relations)
    for (const text of [...one.sources, ...one.examples.map(({ source }) => source)])
      for (const number of citedIn(text)) {
        const names = checkedBy.get(number) ?? new Set();
        checkedBy.set(number, names.add(one.name));
      }
  return rows(
    ['no.', 'document', 'checks of'],
    handbookSources.map(({ number, document, weak }) => [
      `${number}${weak ? ' †' : ''}`,
      document,
      [...(checkedBy.get(number) ?? [])].map((name) => `\`${name}\``).join(', '),
    ]),
  );
}

function weakList(relations: readonly AnyRelation[]): string {
  const weak = relations.filter((one) => one.confidence === 'practice' || one.confidence === 'memory');
  const defaults = new Map<string, string>();
  for (const one of relations)
    for (const spec of Object.values(one.inputs))
      if (spec.default && (spec.default.confidence === 'practice' || spec.default.confidence === 'memory'))
        defaults.set(
          `${spec.title}: ${show(spec.default.quantity)}`,
          `${spec.default.source} (${sure[spec.default.confidence]})`,
        );
  const byHand = relations.filter((one) => !one.examples.some(({ source }) => isOutside(source)));
  return [
    `Sums and other plain arithmetic, checked by hand alone: ${byHand.map((one) => `\`${one.name}\``).join(', ')}.`,
    'Relations:',
    weak.map((one) => `- ${one.title} (\`${one.name}\`): ${sure[one.confidence]}`).join('\n'),
    'Defaults, taken and told where the plan is silent:',
    [...defaults].map(([what, source]) => `- ${what}: ${source}`).join('\n'),
  ].join('\n\n');
}

function group(relations: readonly AnyRelation[], number: number, title: string): readonly string[] {
  const own = relations.filter((one) => one.group === number);
  return own.length === 0 ? [] : [`## ${number}. ${title}`, ...own.flatMap(chapter)];
}

function chapter(one: AnyRelation): readonly string[] {
  const inputs = Object.values(one.inputs);
  return [
    `### ${one.title}`,
    `\`${one.name}\`: ${aKind(one.output)}. ${one.formula}`,
    rows(
      ['input', 'given by', 'default', 'holds for'],
      inputs.map((spec) => [
        spec.title + (spec.several ? ' (several)' : ''),
        spec.from,
        defaultOf(spec),
        validOf(spec),
      ]),
    ),
    [
      `- Holds for: ${one.validity}`,
      `- Assumes: ${one.assumptions.join('; ')}`,
      `- Sources: ${[...new Set(one.sources)].join('; ')}`,
      `- How sure: ${sure[one.confidence]}`,
      ...one.examples.map((example) => `- Check: ${checkOf(one, example)}`),
    ].join('\n'),
  ];
}

const aKind = (kind: Kind): string => kindInWords(kind);

const defaultOf = (spec: InputSpec): string =>
  spec.default ? show(spec.default.quantity) : spec.optional ? 'may be left out' : '';

function validOf(spec: InputSpec): string {
  if (spec.kind === 'refrigerant') return 'refrigerants of the tables';
  if (spec.kind === 'word' || spec.kind === 'date' || !spec.valid) return '';
  const [low, high] = spec.valid;
  const kind = spec.kind;
  const say = (value: number): string => show({ kind, low: value, high: value });
  return Number.isFinite(high) ? `${say(low)} to ${say(high)}` : `from ${say(low)}`;
}

function checkOf(one: AnyRelation, { inputs, expect, tolerance, source }: Example): string {
  const given = Object.entries(inputs)
    .map(([key, text]) => `${one.inputs[key]?.title ?? key} ${typeof text === 'string' ? text : text.join(' and ')}`)
    .join(', ');
  const within = tolerance <= 1e-6 ? '' : `, within ${Number((tolerance * 100).toPrecision(2))} %`;
  const cited = citedIn(source);
  return `${given} → ${expect}${within} (${source})${cited.length > 0 ? ` [${cited.join(', ')}]` : ''}`;
}
