import type { Confidence } from './source';
import { fahrenheit, psi } from './table-units';
import type { Temper } from './tubes';

/** Allowable stress of copper tube by temper: rows of °F and psi as printed in the copper trade handbook, table 3c. */
const rows: Readonly<Record<Temper, readonly (readonly [degreesFahrenheit: number, stress: number])[]>> = {
  annealed: [
    [100, 6000],
    [150, 5100],
    [200, 4900],
    [250, 4800],
    [300, 4700],
    [350, 4000],
    [400, 3000],
  ],
  drawn: [
    [100, 10300],
    [150, 10300],
    [200, 10300],
    [250, 10300],
    [300, 10000],
    [350, 9700],
    [400, 9400],
  ],
};

export const tubeStressSource =
  'Copper tube handbook table 3c (allowable stress S by temperature; brazed tube takes the annealed values)';
export const tubeStressConfidence: Confidence = 'published';

/** The hottest tube that the table reaches, K. */
export const hottestTube = fahrenheit(400);

/**
 * Allowable stress in Pa at a temperature in K: straight between the printed rows, the first row below 100 °F,
 * null above 400 °F.
 */
export const allowableStress = (temper: Temper, temperature: number): number | null => {
  const table = rows[temper];
  if (!Number.isFinite(temperature) || temperature > hottestTube + 1e-9) return null;
  for (let i = 1; i < table.length; i++) {
    const [t0, s0] = table[i - 1]!;
    const [t1, s1] = table[i]!;
    if (temperature <= fahrenheit(t0)) return s0 * psi;
    if (temperature <= fahrenheit(t1))
      return (s0 + ((s1 - s0) * (temperature - fahrenheit(t0))) / (fahrenheit(t1) - fahrenheit(t0))) * psi;
  }
  return table[table.length - 1]![1] * psi;
};

/** Density of copper, kg/m3: 0.323 lb/in3 reproduces the printed weights of ASTM B280. */
export const copperDensity = (0.323 * 0.45359237) / 0.0254 ** 3;
