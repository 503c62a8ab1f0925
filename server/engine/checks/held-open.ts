import type { Space } from '../circuit/spaces';
import type { Plant } from '../circuit/state';

/** Valves that keep a hose from a section, and the steps that hold them open. */

/** The shut valves at a section's ends, in it or next to it, that a hose is let in by: those under control before those of hands. */
export function shutAround(plant: Plant, space: Space): readonly number[] {
  const { graph } = plant;
  const near = space.cells.flatMap((cell) =>
    [cell * 2, cell * 2 + 1].flatMap((end) => {
      const joint = graph.joints[graph.ends[end]!.joint];
      return (joint?.ends ?? []).map((each) => graph.ends[each]!.part);
    }),
  );
  const shut = [...new Set([...space.parts, ...near])]
    .filter((part) => {
      const { shuts } = graph.parts[part]!.kind;
      const { position } = plant.parts[part]!;
      return shuts !== undefined && (position === 'shut' || (position === 'control' && shuts !== 'hand'));
    })
    .sort((a, b) => a - b);
  // What a hand has shut keeps something in that is to stay there, as long as there is another way.
  const others = shut.filter((part) => graph.parts[part]!.kind.shuts !== 'hand');
  return others.length > 0 ? others : shut;
}

/** How each kind of valve is held open: one step for those of a kind. */
export function openLines({ graph }: Plant, valves: readonly number[]): readonly string[] {
  const of = (...kinds: string[]): readonly string[] =>
    valves
      .map((valve) => graph.parts[valve]!)
      .filter(({ kind }) => kinds.includes(kind.kind))
      .map(({ name }) => name);
  const line = (names: readonly string[], how: string): string[] =>
    names.length > 0 ? [`open ${names.join(', ')}${how}`] : [];
  return [
    ...line(of('solenoid'), ' by magnet'),
    ...line(of('evaporator-pressure-regulator'), ' by stem'),
    ...line(of('electronic-expansion-valve'), ' by service-tool'),
    ...line(of('ball-valve', 'service-valve'), ''),
  ];
}
