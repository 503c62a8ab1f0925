import type { Confidence } from './source';
import { celsius } from './table-units';

/** Temper by EN 12735-1: hard R290, half-hard R250, annealed R220. */
export type EuropeanTemper = 'hard' | 'half-hard' | 'annealed';

const newtonPerSquareMillimetre = 1e6;
const at65: Readonly<Record<EuropeanTemper, number>> = { hard: 72.5, 'half-hard': 60, annealed: 46 };

/** Design stress of annealed tube, °C and N/mm². */
const annealed: readonly (readonly [celsius: number, stress: number])[] = [
  [65, 46],
  [110, 40],
  [150, 34],
  [175, 26],
  [200, 18],
];

export const europeanStressSource =
  'maximum working pressure of copper tube, UK copper trade body: P = 20 F t / (D - t)';
export const europeanStressConfidence: Confidence = 'published';

/**
 * Design stress in Pa at a temperature in K. The row next above holds, which is the weaker one; hard and half-hard are
 * printed only to 65 °C, so that they are null above. Null above 200 °C.
 */
export const europeanStress = (temper: EuropeanTemper, temperature: number): number | null => {
  if (temper !== 'annealed') return temperature <= celsius(65) + 1e-9 ? at65[temper] * newtonPerSquareMillimetre : null;
  const row = annealed.find(([degrees]) => temperature <= celsius(degrees) + 1e-9);
  return row === undefined ? null : row[1] * newtonPerSquareMillimetre;
};
