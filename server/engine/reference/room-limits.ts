import type { SafetyClass } from './refrigerant-facts.schema';
import type { Confidence } from './source';

/** Charge caps of UL and IEC 60335-2-40 annex GG: m3 of gas at the lower flammability limit. From memory. */
const caps: Readonly<Partial<Record<SafetyClass, readonly [number, number, number]>>> = {
  A2L: [6, 52, 260],
  A2: [4, 26, 130],
  A3: [4, 26, 130],
};

export const chargeCapSource =
  'UL and IEC 60335-2-40 annex GG: m1, m2, m3 = 6, 52, 260 m3 × LFL (A2L), 4, 26, 130 (A2, A3)';
export const chargeCapConfidence: Confidence = 'memory';

/** The three caps in m3 for a class, undefined for classes without a cap of this kind. */
export const chargeCaps = (safetyClass: SafetyClass): readonly [number, number, number] | undefined =>
  caps[safetyClass];
