import type { Confidence } from './source';
import { pound, psi } from './table-units';

export type PressureClass = 'low' | 'medium' | 'high' | 'very-high';

/**
 * Pressure classes of 40 CFR 82.152 by the saturation pressure of the liquid at 104 °F (40 °C): low below 45 psia,
 * medium to 170, high to 355, very high above, or with a critical point below 104 °F.
 */
export const pressureClassBounds = { medium: 45 * psi, high: 170 * psi, veryHigh: 355 * psi } as const;
export const pressureClassSource = '40 CFR 82.152, low-, medium-, high- and very high-pressure appliance, at 104 degF';
export const pressureClassConfidence: Confidence = 'published';

/** The class by the bubble pressure at 104 °F in Pa; null stands for a critical point below 104 °F. */
export const pressureClass = (pressureAt104: number | null): PressureClass => {
  if (pressureAt104 === null || pressureAt104 > pressureClassBounds.veryHigh) return 'very-high';
  if (pressureAt104 >= pressureClassBounds.high) return 'high';
  return pressureAt104 >= pressureClassBounds.medium ? 'medium' : 'low';
};

/** The machine's date that divides the table: made before it, or on or after it. */
export const machineDateBorder = '1993-11-15';
/** The charge that divides the table, kg. */
export const chargeBorder = 200 * pound;

/** The level to reach: inches of mercury below the atmosphere, or for low-pressure equipment mm of mercury absolute. */
export type RecoveryLevel = { readonly vacuumInHg: number } | { readonly absoluteMmHg: number };

interface LevelRow {
  readonly pressureClass: PressureClass;
  readonly charge: 'any' | 'below-border' | 'from-border';
  readonly before: RecoveryLevel;
  readonly after: RecoveryLevel;
}

/** 40 CFR 82.156 table 1. Inches of mercury against a standard of 29.9 inHg. */
const rows: readonly LevelRow[] = [
  { pressureClass: 'very-high', charge: 'any', before: { vacuumInHg: 0 }, after: { vacuumInHg: 0 } },
  { pressureClass: 'high', charge: 'below-border', before: { vacuumInHg: 0 }, after: { vacuumInHg: 0 } },
  { pressureClass: 'high', charge: 'from-border', before: { vacuumInHg: 4 }, after: { vacuumInHg: 10 } },
  { pressureClass: 'medium', charge: 'below-border', before: { vacuumInHg: 4 }, after: { vacuumInHg: 10 } },
  { pressureClass: 'medium', charge: 'from-border', before: { vacuumInHg: 4 }, after: { vacuumInHg: 15 } },
  { pressureClass: 'low', charge: 'any', before: { absoluteMmHg: 25 }, after: { absoluteMmHg: 25 } },
];

export const recoveryLevelSource = '40 CFR 82.156 table 1 (levels of evacuation before opening)';
export const recoveryLevelConfidence: Confidence = 'published';

/**
 * What the table asks. `charge` is the normal charge in kg of the appliance (or of the part that is shut off);
 * `machineMade` is the recovery machine's date of manufacture, ISO (a year or month stands for its first day).
 */
export const recoveryLevel = (group: PressureClass, charge: number, machineMade: string): RecoveryLevel => {
  const row = rows.find(
    (one) =>
      one.pressureClass === group &&
      (one.charge === 'any' || (one.charge === 'from-border') === charge >= chargeBorder - 1e-9),
  )!;
  return machineMade >= machineDateBorder ? row.after : row.before;
};

/** A leak that keeps the level out of reach: as low as possible, and never above the atmosphere (40 CFR 82.156(a)). */
export const unreachableLevelSource = '40 CFR 82.156(a): leaking parts as low as can be reached, at most 0 psig';

/** Small appliances: sealed at the factory with at most 5 lb (40 CFR 82.152, 82.156(b)). */
export const smallAppliance = {
  mostCharge: 5 * pound,
  shareCompressorRuns: 0.9,
  shareCompressorDead: 0.8,
  vacuumInHg: 4,
  source: '40 CFR 82.156(b): 90 % with a running compressor, 80 % without, or 4 inHg of vacuum',
  confidence: 'published' as Confidence,
} as const;

/** Wait after the level is reached to see whether pressure climbs, s: liquid left, or oil giving off gas. */
export const recoveryWait = {
  low: 300,
  high: 600,
  source: 'common practice, no source',
  confidence: 'practice' as Confidence,
};
