import type { Confidence } from './source';
import { foot, inch } from './table-units';

export type Fitting =
  | 'elbow'
  | 'long-radius-elbow'
  | 'elbow-45'
  | 'tee-through'
  | 'tee-branch'
  | 'ball-valve'
  | 'globe-valve'
  | 'angle-valve';

const fittings: readonly Fitting[] = [
  'elbow',
  'long-radius-elbow',
  'elbow-45',
  'tee-through',
  'tee-branch',
  'ball-valve',
  'globe-valve',
  'angle-valve',
];

/** Outside diameter up to which a row holds, inches; then feet of tube for each fitting in the order above. */
const rows: readonly (readonly [upTo: number, lengths: readonly number[]])[] = [
  [0.5, [1.4, 0.9, 0.7, 0.9, 2.7, 0.3, 17, 7]],
  [0.625, [1.6, 1.0, 0.8, 1.0, 3.0, 0.4, 18, 7]],
  [0.875, [2.0, 1.4, 0.9, 1.4, 4.0, 0.4, 22, 9]],
  [1.125, [2.6, 1.7, 1.3, 1.7, 5.0, 0.6, 29, 12]],
  [1.375, [3.3, 2.3, 1.7, 2.3, 7.0, 0.8, 38, 15]],
  [1.625, [4.0, 2.6, 2.1, 2.6, 8.0, 1.0, 43, 18]],
  [2.125, [5.0, 3.3, 2.6, 3.3, 10, 1.2, 55, 24]],
];

export const equivalentLengthSource =
  'equivalent lengths in the form of the ASHRAE refrigeration handbook, from memory';
export const equivalentLengthConfidence: Confidence = 'memory';

/** Lengths over bore for tube beyond the table: elbow 30, long radius 20, 45° 16, tee 20 and 60, ball 3, globe 340, angle 145. */
const overBore: Readonly<Record<Fitting, number>> = {
  elbow: 30,
  'long-radius-elbow': 20,
  'elbow-45': 16,
  'tee-through': 20,
  'tee-branch': 60,
  'ball-valve': 3,
  'globe-valve': 340,
  'angle-valve': 145,
};

/** Length of straight tube in m with the same pressure drop as one fitting, by the tube's outside diameter in m. */
export const equivalentLength = (fitting: Fitting, outsideDiameter: number): number => {
  const row = rows.find(([upTo]) => outsideDiameter <= upTo * inch + 1e-6);
  return row ? row[1][fittings.indexOf(fitting)]! * foot : overBore[fitting] * outsideDiameter;
};
