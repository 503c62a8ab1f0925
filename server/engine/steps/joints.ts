import type { Act } from './verb';

/**
 * Whether a torch makes these joints: by what the circuit says of the parts at them; nitrogen that flows says that a
 * torch is meant, a torque wrench or a gasket that it is not. A line whose joint is not stated is brazed, as most are.
 */
export function torchAt(act: Act, ends: readonly number[], nitrogen: boolean, how: string | undefined): boolean {
  if (nitrogen) return true;
  if (how !== undefined) return false;
  const { graph } = act.draft;
  const stated = ends.flatMap((end) => {
    const joint = graph.joints[graph.ends[end]!.joint];
    return (joint?.ends ?? [end]).flatMap((each) => graph.parts[graph.ends[each]!.part]!.properties.joint ?? []);
  });
  return stated.length === 0 || stated.includes('brazed');
}
