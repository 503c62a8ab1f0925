import type { Act } from './verb';

/** Ends of the plant that carry a valve of a unit in place: what "service-valves" of new equipment means. */
export function unitValveEnds(act: Act): readonly number[] {
  const { graph } = act.draft;
  return graph.ends
    .filter((end) => end.valve && graph.parts[end.part]!.unit !== null && act.draft.part(end.part).mounted === 'new')
    .map((end) => end.index);
}

/** Ends of parts that carry a valve of the part's own. */
export const ownValveEnds = (act: Act, parts: readonly number[]): readonly number[] =>
  parts.flatMap((index) => act.draft.graph.parts[index]!.ends.filter((end) => act.draft.graph.ends[end]!.valve));
