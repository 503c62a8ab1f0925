import { spaces } from '../engine/circuit/spaces';
import { holds, type PartState, type Plant } from '../engine/circuit/state';
import type { PartReport } from './shapes/state';

/** How every part stands, in the order of the circuit. */
export function partReports(plant: Plant): readonly (readonly [name: string, part: PartReport])[] {
  const { graph } = plant;
  return graph.parts.map((part) => {
    const own = spaces(plant).filter((space) => space.parts.includes(part.index));
    const shares = new Set(own.flatMap((space) => space.parts).filter((index) => index !== part.index));
    const openings = own.flatMap((space) => space.openings).filter(({ end }) => graph.ends[end]!.part === part.index);
    const state = plant.parts[part.index]!;
    return [
      part.name,
      {
        mounted: state.mounted !== 'none',
        ...contentsOf(state),
        openEnds: openings.map(({ end, diameter }) => {
          const { side, passage } = graph.ends[end]!;
          return { end: part.ends.length > 2 ? `${side} ${passage + 1}` : side, opening: diameter };
        }),
        sharesWith: [...shares].sort((a, b) => a - b).map((index) => graph.parts[index]!.name),
        wet: state.wet !== null,
        tested: state.tested !== null,
        decayTested: state.decayTested !== null,
      },
    ];
  });
}

/** What it holds; of two passages that differ, both, over the range of both. */
function contentsOf({ contents }: PartState): Pick<PartReport, 'holds' | 'pressure' | 'low' | 'high'> {
  const low = Math.min(...contents.map((each) => each.low));
  const high = Math.max(...contents.map((each) => each.high));
  return {
    holds: [...new Set(contents.map(holds))].join(' / '),
    ...(low === high ? { pressure: low } : { low, high }),
  };
}

export const sameReport = (a: PartReport, b: PartReport | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b);
