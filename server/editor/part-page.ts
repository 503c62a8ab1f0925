import { sayer } from '../engine/checks/check';
import type { Part } from '../engine/circuit/graph';
import type { Bound } from '../engine/plan/bind';
import { exactly, show } from '../engine/quantity';
import { tellPart } from '../engine/walk/tell';
import type { Entry } from '../engine/walk/walk';
import type { PlanView } from './engine';

/** What a part is, in Markdown: kind, standing, size. */
export function partPage(part: Part, atmosphere: number): string {
  const { properties } = part;
  const length = (value: number | undefined, name: string): string[] =>
    value === undefined ? [] : [`${name}${show(exactly('length', value), { system: 'both' })}`];
  const size = [
    ...(properties.tube
      ? [properties.tube.shown, `bore ${show(exactly('length', properties.tube.bore), { as: 'in', system: 'both' })}`]
      : []),
    ...length(properties.length, ''),
    ...length(properties.rise, 'rise '),
    ...length(properties.drop, 'drop '),
    ...(properties.rated === undefined
      ? []
      : [`rated ${show(exactly('pressure', properties.rated), { system: 'both', atmosphere })}`]),
  ];
  const never = part.kind.neverFlush ? [`Never flushed: ${part.kind.neverFlush}.`] : [];
  return [
    `**${part.name}**: ${part.standing} ${part.kind.kind === part.name ? '' : `${part.kind.kind}, `}${part.kind.meaning}.`,
    ...(size.length > 0 ? [size.join(', ')] : []),
    ...never,
  ].join('\n\n');
}

/** The state of some parts before and after an entry of the walk, in Markdown; parts that the step leaves alone once. */
export function statePage(view: PlanView, entry: Entry, parts: readonly number[]): string {
  const say = sayer(view);
  return parts
    .map((index) => {
      const before = lines(view, entry.before, index);
      const after = lines(view, entry.after, index);
      const name = say.part(index);
      if (before === after) return `**${name}** at this step:\n${after}`;
      return `**${name}** before this step:\n${before}\n\nafter it:\n${after}`;
    })
    .join('\n\n');
}

export function lines(view: PlanView, plant: Entry['after'], index: number): string {
  const say = sayer(view);
  return tellPart(plant, index)
    .map(({ text, by }) => `- ${text}${by ? `, since ${say.step(by)}` : by === null ? ', since the beginning' : ''}`)
    .join('\n');
}

/** The entries of a plan's walk that a statement stands behind: two for a step of a repeat. */
export const entriesOf = (view: PlanView, bound: Bound): readonly Entry[] =>
  view.walk.entries.filter(({ slot }) => slot.step.bound === bound);
