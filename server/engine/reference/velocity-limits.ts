import { type Fact, fact } from './fact';
import { fahrenheitDifference, feetPerMinute, foot } from './table-units';

const text = 'trade press on refrigeration piping';
const speed = (low: number, high: number, source: string, confidence: Fact['confidence']): Fact =>
  fact('velocity', low * feetPerMinute, high * feetPerMinute, source, confidence);

export const suctionHorizontalLeast = speed(500, 750, `${text}: 500 fpm; 700 to 750 by others`, 'published');
export const suctionRiserLeast = speed(
  1000,
  1500,
  `${text}: 1000 fpm up a riser; 1500 for safety (practice)`,
  'published',
);
export const vapourMost = speed(3000, 4000, `${text}: 3000 fpm preferred, 4000 most`, 'published');
export const condenserDrainMost = speed(100, 100, `${text}: condenser drain at most 100 fpm`, 'published');
export const liquidMost = speed(300, 360, 'liquid line about 300 fpm: from memory', 'memory');
/** Pressure drop as the loss of saturation temperature that it means. */
export const suctionDropMost = fact(
  'temperature-difference',
  2 * fahrenheitDifference,
  2 * fahrenheitDifference,
  'suction line 2 degF: from memory of the ASHRAE tables',
  'memory',
);
export const dischargeDropMost = fact(
  'temperature-difference',
  fahrenheitDifference,
  fahrenheitDifference,
  'discharge line 1 degF: from memory',
  'memory',
);
export const liquidDropMost = fact(
  'temperature-difference',
  fahrenheitDifference,
  2 * fahrenheitDifference,
  'liquid line 1 to 2 degF: from memory',
  'memory',
);
/** Subcooling to keep at the metering device. */
export const subcoolingLeast = fact(
  'temperature-difference',
  fahrenheitDifference,
  fahrenheitDifference,
  'at least 1 degF of subcooling at the device: from memory',
  'memory',
);
export const trapSpacing = fact(
  'length',
  15 * foot,
  25 * foot,
  'trap at the foot of a riser and every 15 to 25 ft: common practice, no source',
  'practice',
);
/** Flooding number below which oil film falls back in a riser (Jacobs and others). */
export const floodingNumberLeast = fact(
  'count',
  0.85,
  0.85,
  'flooding criterion after Jacobs: j* at least 0.85, from memory',
  'memory',
);
/** Roughness of drawn copper. */
export const copperRoughness = fact(
  'length',
  1.5e-6,
  1.5e-6,
  'drawn tube, 1.5 micrometre (5e-6 ft): from memory of the usual chart',
  'memory',
);
export const lineLengthUsual = fact(
  'length',
  80 * foot,
  150 * foot,
  'total equivalent length of residential lines: common practice, no source',
  'practice',
);
export const liftUsual = fact(
  'length',
  25 * foot,
  50 * foot,
  'lift of residential lines: common practice, no source',
  'practice',
);
export const longLineFrom = fact(
  'length',
  80 * foot,
  80 * foot,
  'over 80 ft a long-line package: common practice, no source',
  'practice',
);
