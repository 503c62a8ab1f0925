import type { Plant } from '../../../server/engine/circuit/state';
import type { Event } from '../../../server/engine/steps/events';
import type { Entry } from '../../../server/engine/walk/walk';
import { Workspace } from '../../../server/engine/workspace';

/** The walk of a small plan at sea level: its circuit and its steps, a line each. */
export function walked(parts: string, steps: readonly string[]): readonly Entry[] {
  const workspace = new Workspace();
  workspace.setFile(
    'a.jobplan',
    `plan a {\nkind repair\nsite {\naltitude 0 ft\n}\nsystem {\nrefrigerant R-134a\noil POE\ndesign-pressure low 150 psig, high 250 psig\n}\ncircuit {\n${parts}\n}\nsteps {\n${steps.join('\n')}\n}\n}\n`,
  );
  return workspace.snapshot().plans('a.jobplan')[0]!.walk.entries;
}

/** The last step's event of one type. */
export const lastEvent = <T extends Event['type']>(
  entries: readonly Entry[],
  type: T,
): Extract<Event, { type: T }> | undefined =>
  entries.at(-1)!.events.find((event): event is Extract<Event, { type: T }> => event.type === type);

/** Parts that hold a gas in every passage, by name, in flow order. */
export const holding = (plant: Plant, gas: string): readonly string[] =>
  plant.graph.parts
    .filter(
      ({ index }) =>
        plant.parts[index]!.mounted !== 'none' && plant.parts[index]!.contents.every((each) => each.gas === gas),
    )
    .map(({ name }) => name);

/** Each space of an event as the names of its parts. */
export const named = (plant: Plant, spaces: readonly { readonly parts: readonly number[] }[]): readonly string[] =>
  spaces.map((space) => space.parts.map((index) => plant.graph.parts[index]!.name).join('+'));
