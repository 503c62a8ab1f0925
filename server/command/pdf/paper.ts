import type { Paper } from '../../engine/procedure/document';

export const millimetre = 72 / 25.4;

/** Width and height in points, portrait: ANSI/ASME Y14.1 size A, and ISO 216. */
export const paperSizes: Readonly<Record<Paper, readonly [number, number]>> = {
  letter: [612, 792],
  a4: [210 * millimetre, 297 * millimetre],
};

export const margin = 15 * millimetre;

/** Room for handwriting. */
export const writingHeight = 8 * millimetre;

export const bodySize = 10.5;
export const noteSize = 9;
/** From baseline to baseline for a size of type. */
export const leading = (size: number): number => size * 1.24;
