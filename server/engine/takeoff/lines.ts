import type { Part } from '../circuit/graph';
import { isLine } from '../circuit/kinds';
import type { Plan } from '../plan/plan';
import { exactly } from '../quantity';
import { type Given, input } from './given';

/** Cooling load of a line and the pipes beside it, W. */
export interface Loads {
  readonly least: number;
  readonly full: number;
}

/** The load at the least and in full; null where the plan does not say what goes through it. */
export function loadsOf(plan: Plan, line: Part, together: readonly Part[]): Loads | null {
  const own = line.properties.capacity;
  if (own) return { least: own.least ?? own.full, full: own.full };
  const { capacity, leastCapacity } = plan.system;
  // In one of several branches only a part of the load goes; what part, the plan would have to say.
  const branches = plan.graph.parts.filter((part) => part.kind.kind === 'evaporator');
  const alone = line.within.length === 0 || together.length > 1 || branches.length <= 1;
  return capacity && alone ? { least: (leastCapacity ?? capacity).quantity.low, full: capacity.quantity.low } : null;
}

/** The lines that stay or come, of the circuits that the plan works on. */
export const linesOf = (plan: Plan): readonly Part[] =>
  plan.graph.parts.filter(
    (part) => isLine(part.kind) && part.standing !== 'removed' && plan.graph.circuits[part.circuit]?.untouched !== true,
  );

/** The lines that begin and end at the same joints as one: the pipes of a double riser, or the line alone. The smallest first. */
export function besides(plan: Plan, line: Part): readonly Part[] {
  const joints = (part: Part): string => part.ends.map((end) => plan.graph.ends[end]!.joint).join();
  return linesOf(plan)
    .filter((part) => part.kind.kind === line.kind.kind && part.properties.tube && joints(part) === joints(line))
    .sort((a, b) => a.properties.tube!.bore - b.properties.tube!.bore);
}

export const boreOf = ({ properties: { tube } }: Part): Given | undefined =>
  tube && input(exactly('length', tube.bore), 'reference', undefined, tube.shown);

export const lengthOf = ({ properties: { length } }: Part): Given | undefined =>
  length === undefined ? undefined : input(exactly('length', length), 'plan');
