import { isProblem, nearest, type ShowOptions } from '../../engine/quantity';
import type { Figure } from '../../engine/takeoff/figure';
import { relationNamed, relations } from '../../engine/takeoff/figures';
import { type Given, readGiven } from '../../engine/takeoff/given';
import type { AnyRelation } from '../../engine/takeoff/relation';
import { showFigure } from '../../engine/takeoff/show-figure';
import type { CommandDescription } from '../description';
import { type Host, type Paint, paintFor } from '../host';
import { formatOption, unitsIn, unitsOption, wantsJson } from '../options';
import { figureReport } from '../report/figure';
import { jsonText } from '../report/json';
import { table } from '../report/table';
import type { RelationsReport } from '../shapes/figure';
import { fine, notDone, Trouble } from '../trouble';
import { altitudeOption, atmosphereIn } from '../units';

export const figure: CommandDescription = {
  about: 'Without a name it lists the relations; with a name alone it says what the relation needs.',
  takes: [
    ['[name]', 'of a relation'],
    ['[key=value...]', 'what goes in: bore="0.785 in" length="50 ft"'],
  ],
  options: [formatOption('text', 'json'), unitsOption, altitudeOption],
  examples: [
    'jobplan figure',
    'jobplan figure line-volume bore="0.785 in" length="50 ft"',
    'jobplan figure line-volume bore="20 mm" length="15 m" --units si --format json',
  ],
  run: async (host, words) => {
    const name = words.maybe(0);
    if (name === undefined) {
      host.out(wantsJson(words) ? jsonText(listing()) : listText(paintFor(host)));
      return fine;
    }
    const relation = relationOf(name);
    const atmosphere = atmosphereIn(words);
    const { given, stated } = readInputs(relation, words.several(1), atmosphere);
    const options: ShowOptions = { system: unitsIn(words), atmosphere };
    const result = relation.figure('command line', given, { system: unitsIn(words), atmosphere });
    if (wantsJson(words)) host.out(jsonText(figureReport(result, options)));
    else host.out(figureText(relation, result, options, paintFor(host)));
    if (result.quantity !== null) return fine;
    complain(host, relation, result, stated);
    return notDone;
  },
};

function relationOf(name: string): AnyRelation {
  const relation = relationNamed(name);
  if (relation) return relation;
  const near = nearest(
    name,
    relations.map((each) => each.name),
  );
  throw new Trouble(
    `There is no relation "${name}"${near ? `; perhaps "${near}" is meant` : '; `jobplan figure` lists them'}.`,
  );
}

interface Read {
  readonly given: Readonly<Record<string, Given | readonly Given[]>>;
  /** The keys that were typed. */
  readonly stated: ReadonlySet<string>;
}

function readInputs(relation: AnyRelation, pairs: readonly string[], atmosphere: number): Read {
  const given: Record<string, Given | readonly Given[]> = {};
  const stated = new Set<string>();
  for (const pair of pairs) {
    const at = pair.indexOf('=');
    if (at < 1) throw new Trouble(`"${pair}" is no key=value, as in length="50 ft".`);
    const key = pair.slice(0, at).trim();
    const spec = Object.hasOwn(relation.inputs, key) ? relation.inputs[key] : undefined;
    if (!spec) {
      const keys = Object.keys(relation.inputs);
      const near = nearest(key, keys);
      throw new Trouble(
        `${relation.name} takes no "${key}"${near ? `; perhaps "${near}" is meant` : `, but ${keys.join(', ')}`}.`,
      );
    }
    const value = readGiven(spec.kind, pair.slice(at + 1), atmosphere);
    if (isProblem(value)) {
      const such =
        value.suggestions.length > 0
          ? ` Perhaps ${value.suggestions.map((each) => `\`${each}\``).join(' or ')} is meant.`
          : '';
      throw new Trouble(
        `${key}: ${value.message}${value.message.includes(value.suggestions[0] ?? '\u0000') ? '' : such}`,
      );
    }
    if (stated.has(key) && spec.several !== true) throw new Trouble(`"${key}" is given twice.`);
    stated.add(key);
    given[key] = spec.several === true ? [...((given[key] as readonly Given[] | undefined) ?? []), value] : value;
  }
  return { given, stated };
}

function complain(host: Host, relation: AnyRelation, result: Figure, stated: ReadonlySet<string>): void {
  const lacking = Object.entries(relation.inputs).filter(
    ([key, spec]) => !stated.has(key) && spec.default === undefined && spec.optional !== true,
  );
  const needs = lacking.map(([key, { title, kind }]) => `${key}=… (${title}; ${kindWords(kind)})`);
  if (needs.length > 0) host.say(`jobplan: ${relation.name} needs ${needs.join(', ')}.\n`);
  else for (const note of result.notes) host.say(`jobplan: ${note}\n`);
}

const kindWords = (kind: string): string => kind.replaceAll('-', ' ');

function figureText(relation: AnyRelation, result: Figure, options: ShowOptions, paint: Paint): string {
  const inputs = Object.entries(result.inputs).map(([key, { shown, from }]) => [
    `  ${key}`,
    shown,
    from === 'plan' ? '' : `(${from === 'default' ? 'taken' : from})`,
  ]);
  const sources = [...new Set(result.sources)];
  return [
    `${relation.title}: ${paint('bold', result.quantity ? showFigure(result, options) : 'no figure')}`,
    ...(inputs.length > 0 ? ['', ...table([['', '', ''], ...inputs]).slice(1)] : []),
    '',
    `  ${result.formula}`,
    ...result.workings.map((line) => `  ${line}`),
    '',
    ...result.notes.map((note) => `  Note: ${note}`),
    `  Holds for ${relation.validity}.`,
    `  Source: ${sources.join('; ')} (${result.confidence})`,
    '',
  ].join('\n');
}

function listText(paint: Paint): string {
  const rows = relations.map((each) => [each.name, each.title, Object.keys(each.inputs).join(', ')]);
  const [head, ...rest] = table([['name', 'what it is', 'inputs'], ...rows]);
  return `${[paint('bold', head!), ...rest].join('\n')}\n`;
}

const listing = (): RelationsReport => ({
  version: 1,
  relations: relations.map(({ name, title, formula, inputs }) => ({
    name,
    title,
    formula,
    inputs: Object.entries(inputs).map(([key, spec]) => ({
      name: key,
      title: spec.title,
      kind: spec.kind,
      needed: spec.default === undefined && spec.optional !== true,
      several: spec.several === true,
    })),
  })),
});
