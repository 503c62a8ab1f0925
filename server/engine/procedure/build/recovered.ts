import type { Space } from '../../circuit/spaces';
import type { Plan } from '../../plan/plan';
import type { Sheet } from './sheet';

/**
 * Whether a recovery takes the machine's charge: it reaches more than half of the parts, and no receiver is shut off from it.
 * A section between two shut valves holds a part of the charge that the plate does not tell.
 */
export const isWhole = (plan: Plan, spaces: readonly Space[]): boolean => {
  const reached = new Set(spaces.flatMap((space) => space.parts));
  const own = plan.graph.parts.filter((part) => !plan.graph.circuits[part.circuit]?.untouched);
  return (
    reached.size > own.length / 2 &&
    own.every((part) => part.kind.kind !== 'receiver' || part.standing === 'added' || reached.has(part.index))
  );
};

/** Whether some step of the plan recovers the machine's charge, into the cylinder of this label where one is given. */
export const recoversWhole = (sheet: Sheet, into?: string | null): boolean =>
  sheet.walk.entries.some((entry) =>
    entry.events.some(
      (event) =>
        event.type === 'recovers' &&
        (into === undefined || event.into === null || event.into === into) &&
        isWhole(sheet.plan, event.spaces),
    ),
  );
