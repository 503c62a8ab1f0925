import { contentsOfCell } from '../../circuit/settle';
import type { Space } from '../../circuit/spaces';
import type { Contents } from '../../circuit/state';
import type { Plan } from '../../plan/plan';
import { factsOf, isFlammable } from '../../reference/refrigerant-facts';
import type { Here } from './here';
import { listed } from './words';

/** What the cautions ask of the plant: questions that more than one of them needs. */

export const flammable = (refrigerant: string | null): boolean => {
  const safetyClass = refrigerant === null ? null : (factsOf(refrigerant)?.safetyClass ?? null);
  return safetyClass !== null && isFlammable(safetyClass);
};

export const classOf = (refrigerant: string): string => factsOf(refrigerant)?.safetyClass ?? 'class not known';

export const heldBefore = (here: Here, space: Space): readonly Contents[] =>
  space.cells.map((cell) => contentsOfCell(here.before, cell));

/** Parts that hold a flammable charge of their own behind shut valves while the step is done. */
export function shutInFlammable(here: Here): readonly { readonly part: string; readonly refrigerant: string }[] {
  return here.plan.graph.parts.flatMap((part) => {
    const state = here.before.parts[part.index]!;
    const holds = part.properties.holds;
    return holds && state.ownCharge && flammable(holds.refrigerant)
      ? [{ part: part.name, refrigerant: holds.refrigerant }]
      : [];
  });
}

/** Whether parts still carry the acid of a burnout. */
export const acidIn = (here: Here, parts: readonly number[]): boolean =>
  parts.some((index) => here.before.parts[index]?.residue.acid === true);

/** A room that gas can fill: "the attic"; null out of doors or where the plan says nothing. */
export function closedRoom(plan: Plan): string | null {
  const room = plan.site.workSpace;
  return room && !room.open ? `the ${room.where.replaceAll('-', ' ')}` : null;
}

export const names = (here: Here, parts: Iterable<number>): string => listed([...new Set(parts)].map(here.partName));
