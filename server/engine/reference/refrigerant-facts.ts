import data from './refrigerant-facts.json';
import type { OilFamily, RefrigerantFactsTable, SafetyClass } from './refrigerant-facts.schema';
import type { Confidence } from './source';
import { cubicFoot, pound } from './table-units';

export type { OilFamily, SafetyClass } from './refrigerant-facts.schema';

/** What law, safety and the oil ask of a refrigerant; its thermodynamics stand in the property tables. SI throughout. */
export interface RefrigerantFacts {
  readonly name: string;
  readonly safetyClass: SafetyClass | null;
  readonly classConfidence: Confidence;
  /** Lower flammability limit, kg/m3. */
  readonly flammabilityLimit: { readonly low: number; readonly high: number } | null;
  /** Refrigerant concentration limit (RCL), kg/m3. */
  readonly concentrationLimit: { readonly low: number; readonly high: number } | null;
  readonly limitConfidence: Confidence;
  /** Warming potential over 100 years by the fourth and by the fifth assessment report; US rules use the fourth. */
  readonly warming: { readonly fourth: number; readonly fifth: number };
  readonly warmingConfidence: Confidence;
  readonly oils: readonly OilFamily[];
  /** Oils that carry it only in part: a hydrocarbon or HCFC share helps them back to the compressor. */
  readonly oilsWithCare: readonly OilFamily[];
  readonly replaces: readonly string[];
  readonly ozoneDepleting: boolean;
  /** Glide at one atmosphere, K. */
  readonly glide: number;
  readonly newEquipmentOnly: boolean;
  readonly composition: readonly { readonly refrigerant: string; readonly share: number }[] | null;
  readonly note: string | null;
  readonly source: string;
}

const table = data as unknown as RefrigerantFactsTable;
const poundPerThousandCubicFeet = pound / (1000 * cubicFoot);
const scaled = (pair: readonly [number, number] | null, factor: number) =>
  pair === null ? null : { low: pair[0] * factor, high: pair[1] * factor };

export const refrigerantFacts: readonly RefrigerantFacts[] = table.rows.map((row) => ({
  name: row.name,
  safetyClass: row.safetyClass,
  classConfidence: row.classConfidence,
  flammabilityLimit: scaled(row.flammabilityLimit, 1e-3),
  concentrationLimit: scaled(row.concentrationLimit, poundPerThousandCubicFeet),
  limitConfidence: row.limitConfidence,
  warming: { fourth: row.warming4, fifth: row.warming5 },
  warmingConfidence: row.warmingConfidence,
  oils: row.oils,
  oilsWithCare: row.oilsWithCare,
  replaces: row.replaces,
  ozoneDepleting: row.ozoneDepleting,
  glide: row.glide,
  newEquipmentOnly: row.newEquipmentOnly,
  composition:
    row.composition?.map((part) => ({ refrigerant: part.refrigerant, share: part.massPercent / 100 })) ?? null,
  note: row.note,
  source: table.source,
}));

/** `R410A`, `r-410a` and `410A` all mean `R-410A`. */
const key = (name: string): string => name.trim().toUpperCase().replace(/^R/, '').replace(/[-\s]/g, '');
/** Most ask by the name that the table has. */
const byName = new Map(refrigerantFacts.map((facts) => [facts.name, facts]));
const byKey = new Map(refrigerantFacts.map((facts) => [key(facts.name), facts]));

/** The facts of a refrigerant by name in any usual spelling; undefined where the table has none. */
export const factsOf = (name: string): RefrigerantFacts | undefined => byName.get(name) ?? byKey.get(key(name));

const steps = ['1', '2L', '2', '3'] as const;

/** How flammable a class is: 0 for class 1, then 2L, 2 and 3. */
export const flammability = (safetyClass: SafetyClass): 0 | 1 | 2 | 3 =>
  steps.indexOf(safetyClass.slice(1) as (typeof steps)[number]) as 0 | 1 | 2 | 3;

export const isFlammable = (safetyClass: SafetyClass): boolean => flammability(safetyClass) > 0;

export type OilFit = 'suits' | 'with-care' | 'does-not-suit' | 'not-known';

/** Whether an oil family carries a refrigerant; `not-known` where the table has no word on it. */
export const oilFit = (refrigerant: string, oil: OilFamily): OilFit => {
  const facts = factsOf(refrigerant);
  if (facts === undefined || facts.oils.length === 0) return 'not-known';
  if (facts.oils.includes(oil)) return 'suits';
  return facts.oilsWithCare.includes(oil) ? 'with-care' : 'does-not-suit';
};

/** Glide from which a blend is charged only as liquid and discarded after large vapour leaks, K (common practice). */
export const highGlide = 5;
/** Glide from which a blend is charged as liquid so that its composition stays, K (common practice). */
export const chargedAsLiquidFrom = 0.5;
