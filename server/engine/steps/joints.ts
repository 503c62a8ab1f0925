import type { Graph } from '../circuit/graph';
import type { Act } from './verb';

/**
 * Whether a torch makes these joints: by what the circuit says of the parts at them; nitrogen that flows says that a
 * torch is meant, a torque wrench or a gasket that it is not. A line whose joint is not stated is brazed, as most are.
 */
export function torchAt(act: Act, ends: readonly number[], nitrogen: boolean, how: string | undefined): boolean {
  if (nitrogen) return true;
  if (how !== undefined) return false;
  const stated = ends.flatMap((end) => statedAt(act.draft.graph, end));
  return stated.length === 0 || stated.includes('brazed');
}

/**
 * The ends that are brazed because a part at the joint is stated so, and none there says flare: a valve that is changed
 * is as often flared or bolted, so that nothing is taken for granted of it.
 */
export const brazedEnds = (act: Act, ends: readonly number[]): readonly number[] =>
  ends.filter((end) => {
    const stated = statedAt(act.draft.graph, end);
    return stated.includes('brazed') && !stated.includes('flare');
  });

/** The kinds of joint that the parts at the joint of an end state. */
export const statedAt = (graph: Graph, end: number): readonly string[] =>
  (graph.joints[graph.ends[end]!.joint]?.ends ?? [end]).flatMap(
    (each) => graph.parts[graph.ends[each]!.part]!.properties.joint ?? [],
  );
