import type { Part } from '../circuit/graph';
import type { Space } from '../circuit/spaces';
import type { Plan } from '../plan/plan';
import { exactly } from '../quantity';
import type { Figure } from './figure';
import { lineVolume, spaceVolume, trapVolume } from './figures';
import { computed, type Given, input } from './given';
import { noted } from './noted';
import { optionsOf } from './options';
import type { FigureOptions } from './relation';

const given = (kind: 'length' | 'volume', value: number | undefined, shown?: string): Given | undefined =>
  value === undefined ? undefined : input(exactly(kind, value), 'plan', shown);

const ofLines = new WeakMap<Part, { readonly options: FigureOptions; readonly figure: Figure }>();

/** The inside volume of a line, from its tube and its length; found once a line, since many steps ask for it. */
export function volumeOfLine(plan: Plan, part: Part): Figure {
  const options = optionsOf(plan);
  const known = ofLines.get(part);
  if (known?.options.atmosphere === options.atmosphere && known.options.system === options.system) return known.figure;
  const { tube } = part.properties;
  const figure = lineVolume.figure(
    part.name,
    {
      bore: tube ? input(exactly('length', tube.bore), 'reference', tube.shown) : undefined,
      length: given('length', part.properties.length),
    },
    options,
  );
  ofLines.set(part, { options, figure });
  return figure;
}

/** What a line's traps hold: the two legs of each loop lie below its overflow. */
export const volumesOfTraps = (plan: Plan, part: Part): readonly Figure[] =>
  (part.properties.traps ?? []).map((trap) =>
    trapVolume.figure(
      part.name,
      {
        bore: part.properties.tube
          ? input(exactly('length', part.properties.tube.bore), 'reference', part.properties.tube.shown)
          : undefined,
        lengthBelow: input(exactly('length', trap.depth * 2), 'plan'),
      },
      optionsOf(plan),
    ),
  );

/** Parts that hold so little that nobody states their volume. */
const small = new Set(['drier', 'valve', 'fitting', 'metering']);

/** Parts that hold much and whose volume the plan does not give: what is reckoned by volume leaves them out. */
export const uncounted = (plan: Plan, parts: readonly number[]): readonly Part[] =>
  parts
    .map((index) => plan.graph.parts[index]!)
    .filter(
      ({ properties: { volume, tube, length }, kind }) =>
        volume === undefined && !(tube && length !== undefined) && !small.has(kind.group),
    );

/** The inside volume of several parts, with a note for each whose volume the plan does not give. */
export function volumeOfParts(plan: Plan, subject: string, parts: readonly number[]): Figure {
  const volumes: Given[] = [];
  for (const index of parts) {
    const part = plan.graph.parts[index]!;
    const { volume, tube, length } = part.properties;
    if (volume !== undefined) volumes.push(input(exactly('volume', volume), 'plan'));
    else if (tube && length !== undefined) volumes.push(computed(volumeOfLine(plan, part)));
  }
  const unknown = uncounted(plan, parts).map((part) => part.name);
  const figure = spaceVolume.figure(subject, { volumes }, optionsOf(plan));
  if (unknown.length === 0) return figure;
  return noted(figure, [
    `Without ${unknown.join(', ')}: a line \`volume\` in ${unknown.length > 1 ? 'their blocks' : 'its block'} would count ${unknown.length > 1 ? 'them' : 'it'}.`,
  ]);
}

export const volumeOfSpaces = (plan: Plan, subject: string, spaces: readonly Space[]): Figure =>
  volumeOfParts(plan, subject, [...new Set(spaces.flatMap((space) => space.parts))]);
