import { contentsOfCell } from '../circuit/settle';
import type { Space } from '../circuit/spaces';
import type { Plant } from '../circuit/state';

/**
 * Below about 5,000 micron (667 Pa; 7 mbar where somebody rounds) nothing of what was in is left to speak of: the walk then calls it vacuum. Common
 * practice, no source; it lies at the boiling pressure of water at 35 °F, far below every recovery level.
 */
export const dryVacuum = 700;

/** Whether a space holds refrigerant that has to be recovered: not a new unit's own charge, not the trace in nitrogen. */
export function recoverable(plant: Plant, space: Space): boolean {
  return space.cells.some((cell) => {
    const { part } = plant.graph.ends[cell * 2]!;
    return contentsOfCell(plant, cell).gas === 'refrigerant' && !plant.parts[part]!.ownCharge;
  });
}

/** Whether a new unit's own charge is shut in there. */
export const ownChargeIn = (plant: Plant, space: Space): boolean =>
  space.parts.some((part) => plant.parts[part]!.ownCharge);
