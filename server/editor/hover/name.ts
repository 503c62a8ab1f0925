import type { Part } from '../../engine/circuit/graph';
import type { Bound } from '../../engine/plan/bind';
import { firstLine } from '../../engine/plan/step';
import { refrigerantNamed } from '../../engine/properties';
import { exactly, show } from '../../engine/quantity';
import { factsOf } from '../../engine/reference/refrigerant-facts';
import { membersOf } from '../../engine/walk/targets';
import type { Asked } from '../asking';
import { checkPage } from '../check-page';
import type { PlanView } from '../engine';
import { type Definition, definitionsOf, type Mention } from '../names';
import { entriesOf, lines, partPage, statePage } from '../part-page';
import { planAround } from '../plan-around';
import { figureLines } from './figure';
import { figuresOfLine } from './machine';

/** What a name stands for. */
export function namePages(asked: Asked, bound: Bound, mention: Mention): readonly string[] {
  switch (mention.refers) {
    case 'part':
    case 'place-in-circuit': {
      const view = planAround(asked);
      return view === undefined ? [] : partPages(view, bound, mention);
    }
    case 'refrigerant': {
      const page = refrigerantPage(mention.text);
      return page === undefined ? [] : [page];
    }
    case 'check': {
      const page = checkPage(mention.text);
      return page === undefined ? [] : [page];
    }
  }
  if (mention.declares) return [];
  const top = asked.look.chain[0]?.bound;
  const found = top ? definitionsOf(asked.snapshot, asked.path, top, mention) : [];
  return found.slice(0, 1).map(definitionPage);
}

/** Parts that one hover tells of; a selection may mean a hundred. */
const mostParts = 4;

function partPages(view: PlanView, bound: Bound, mention: Mention): readonly string[] {
  const { graph, site } = view.plan;
  const indexes = membersOf(graph, mention.text) ?? [];
  const parts = indexes.map((index) => graph.parts[index]!).filter((part): part is Part => part !== undefined);
  if (parts.length === 0) return [];
  const shown = parts.slice(0, mostParts);
  const rest =
    parts.length > shown.length
      ? [
          `and ${parts.length - shown.length} more: ${parts
            .slice(mostParts)
            .map((part) => part.name)
            .join(', ')}`,
        ]
      : [];
  const kinds = shown.map((part) => partPage(part, site.atmosphere)).join('\n\n');
  const [entry] = entriesOf(view, bound);
  if (entry)
    return [
      kinds,
      ...(shown.length > 0
        ? [
            statePage(
              view,
              entry,
              shown.map((part) => part.index),
            ),
          ]
        : []),
      ...rest,
    ];
  const { start, entries } = view.walk;
  const end = entries.at(-1)?.after ?? start;
  const states = shown.map(({ index, name }) => {
    const atStart = lines(view, start, index);
    const atEnd = lines(view, end, index);
    return atStart === atEnd
      ? `**${name}**, all through the job:\n${atStart}`
      : `**${name}** at the beginning:\n${atStart}\n\nat the end:\n${atEnd}`;
  });
  const figures = shown.flatMap(({ index }) => figuresOfLine(view, index));
  const sizes = figures.length > 0 ? [figureLines(figures, site.atmosphere)] : [];
  return [kinds, ...sizes, states.join('\n\n'), ...rest];
}

/** Class, glide and boiling point of a refrigerant, with where they come from. */
export function refrigerantPage(name: string): string | undefined {
  const facts = factsOf(name);
  const fluid = refrigerantNamed(name);
  if (facts === undefined && fluid === undefined) return undefined;
  const lines: string[] = [];
  if (facts?.safetyClass) lines.push(`- safety class ${facts.safetyClass}`);
  if (fluid?.boiling) {
    const { bubble, glide } = fluid.boiling;
    lines.push(`- boils at ${show(exactly('temperature', bubble), { system: 'both' })} (bubble, at 1 atm)`);
    lines.push(
      glide < 0.05 ? '- no glide' : `- glide ${show(exactly('temperature-difference', glide), { system: 'both' })}`,
    );
  }
  if (fluid && fluid.composition.length > 1)
    lines.push(
      `- ${fluid.composition.map((each) => `${each.name} ${Math.round(each.mass * 1000) / 10} %`).join(', ')} by mass`,
    );
  if (facts && facts.oils.length > 0) lines.push(`- oils: ${facts.oils.join(', ')}`);
  if (facts && facts.warming.fourth > 0) lines.push(`- warming potential ${facts.warming.fourth} (fourth report)`);
  if (facts?.newEquipmentOnly) lines.push('- for new equipment only');
  return [
    `**${facts?.name ?? name}**`,
    lines.join('\n'),
    ...(facts?.note ? [facts.note] : []),
    ...(facts ? [`*Source: ${facts.source}*`] : []),
  ].join('\n\n');
}

/** What makes a name, in a few lines: its title, and what its block says. */
export function definitionPage({ kind, bound, file }: Definition): string {
  const title = bound.values['title'];
  const inside =
    kind === 'declaration' && bound.word && !large.has(bound.word.word)
      ? bound.block.map((each) => `  ${firstLine(each)}`)
      : [];
  const code = [
    '```jobplan',
    `${firstLine(bound)}${inside.length > 0 ? ' {' : ''}`,
    ...inside,
    ...(inside.length > 0 ? ['}'] : []),
    '```',
  ].join('\n');
  return [...(typeof title === 'string' ? [`**${title}**`] : []), code, `*${file}*`].join('\n\n');
}

/** Declarations whose block is too long to be shown. */
const large = new Set(['plan', 'standard', 'house-rules', 'record']);
