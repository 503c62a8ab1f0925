import type { Graph } from '../circuit/graph';
import type { Space } from '../circuit/spaces';

/** Whether a machine or a pump finds a port in a space: at one of its parts, or at a valve on one of their ends. */
const hasPort = (graph: Graph, space: Space): boolean =>
  space.parts.some(
    (index) => graph.parts[index]!.kind.port || graph.parts[index]!.ends.some((end) => graph.ends[end]!.valve),
  );

/**
 * Which of the spaces that a step means its hoses get to. Of several the hoses hang on those with a port, and one without is
 * missed; where none has a port, the crew has named them and gets to each somehow. A port is always asked where the step
 * says `system`: nobody named a section then.
 */
export function byHose(
  graph: Graph,
  wanted: readonly Space[],
  isSystem: boolean,
): { reached: readonly Space[]; missed: readonly Space[] } {
  const ported = wanted.filter((space) => hasPort(graph, space));
  const reached = ported.length > 0 || isSystem ? ported : wanted;
  return { reached, missed: wanted.filter((space) => !reached.includes(space)) };
}
