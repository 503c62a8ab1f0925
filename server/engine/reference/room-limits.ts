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

/**
 * Most in a self-contained refrigerator or freezer by IEC 60335-2-89 (edition 3): 13 m3 of gas at the lower flammability
 * limit, never more than 1.2 kg (A2, A2L) or 0.5 kg (A3), as trade institutes and the press reported it in 2019; the
 * standard itself was not read. The edition of the US was to ask 8 m3 for appliances with doors, which no plan states.
 */
const sealedCaps: Readonly<Partial<Record<SafetyClass, { readonly volume: number; readonly most: number }>>> = {
  A2L: { volume: 13, most: 1.2 },
  A2: { volume: 13, most: 1.2 },
  A3: { volume: 13, most: 0.5 },
};
export const refrigerationCapSource =
  'IEC 60335-2-89 edition 3, as reported: 13 m3 × LFL, at most 1.2 kg (A2, A2L) or 0.5 kg (A3)';
/** The cap of a self-contained refrigerator: m3 of gas at the limit, and kg; undefined for classes without one. */
export const refrigerationCaps = (
  safetyClass: SafetyClass,
): { readonly volume: number; readonly most: number } | undefined => sealedCaps[safetyClass];
