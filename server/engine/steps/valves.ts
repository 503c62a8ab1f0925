import type { Act } from './verb';

/** Ends of the plant that carry a valve of a unit in place: what "service-valves" of new equipment means. */
export function unitValveEnds(act: Act): readonly number[] {
  const { graph } = act.draft;
  return graph.ends
    .filter((end) => end.valve && graph.parts[end.part]!.unit !== null && act.draft.part(end.part).mounted === 'new')
    .map((end) => end.index);
}

/** Whether the unit that a new one replaces still stands there: its valves are those that "service-valves" means, and no part of the circuit. */
export const oldUnitStands = (act: Act): boolean =>
  act.draft.graph.parts.some((part) => part.unit === part.index && act.draft.part(part.index).mounted === 'old');

/** Valves of the other fluid's side: no part of the circuit, but one that is shut must be opened again. */
export const waterValves = ['water-valve', 'water-valves'] as const;
export const isWaterValve = (thing: string): boolean => (waterValves as readonly string[]).includes(thing);

/** Ends of parts that carry a valve of the part's own. */
export const ownValveEnds = (act: Act, parts: readonly number[]): readonly number[] =>
  parts.flatMap((index) => act.draft.graph.parts[index]!.ends.filter((end) => act.draft.graph.ends[end]!.valve));

/** "txv-1 and txv-2 are". */
export const nameList = (act: Act, parts: readonly number[]): string => {
  const names = parts.map((index) => act.draft.graph.parts[index]!.name);
  return `${names.slice(0, -1).join(', ')}${names.length > 1 ? ' and ' : ''}${names.at(-1)} ${names.length > 1 ? 'are' : 'is'}`;
};
