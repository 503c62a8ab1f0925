import type { Part } from '../circuit/graph';

/** Exchangers through whose other side water or brine always goes. */
const inWater: ReadonlySet<string> = new Set(['coaxial-coil', 'plate-exchanger']);
export const hasWaterSide = (part: Part): boolean => inWater.has(part.kind.kind);
