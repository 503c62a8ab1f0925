import type { Confidence } from './source';
import { cubicFoot, psi } from './table-units';

/** A usual high-pressure nitrogen cylinder: what it is called, its water volume in m3, its marked filling pressure in Pa gauge at 70 °F. */
export interface NitrogenCylinder {
  readonly name: string;
  readonly waterVolume: number;
  readonly fillPressure: number;
  /** Content as the trade says it, standard ft3. */
  readonly printedContent: readonly [number, number];
}

const row = (name: string, cubicFeet: number, pressure: number, low: number, high = low): NitrogenCylinder => ({
  name,
  waterVolume: cubicFeet * cubicFoot,
  fillPressure: pressure * psi,
  printedContent: [low, high],
});

/** Sizes from memory of the trade; the contents were recomputed with a real-gas factor at 70 °F. */
export const nitrogenCylinders: readonly NitrogenCylinder[] = [
  row('20', 0.144, 2015, 19, 20),
  row('40', 0.29, 2015, 38, 40),
  row('60', 0.42, 2216, 63),
  row('80', 0.565, 2265, 77, 85),
  row('125', 0.81, 2265, 123),
  row('150', 0.95, 2265, 144),
  row('250', 1.55, 2265, 234, 255),
  row('300', 1.73, 2640, 300),
];
export const nitrogenCylinderSource = 'usual industrial cylinder sizes: from memory of the trade, read the collar';
export const nitrogenCylinderConfidence: Confidence = 'memory';
