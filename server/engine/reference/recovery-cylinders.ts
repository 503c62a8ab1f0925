import { type Fact, fact } from './fact';
import type { Confidence } from './source';
import { fahrenheit, psi } from './table-units';

/** Net fill = 0.80 × water capacity × specific gravity of the liquid at 77 °F (AHRI Guideline K). */
export const guidelineFillShare: Fact = fact(
  'share',
  0.8,
  0.8,
  'AHRI Guideline K: 0.80 × water capacity × specific gravity at 77 degF',
  'published',
);
export const guidelineFillTemperature = fahrenheit(77);
/** Guideline K is written for cylinders up to 400 psig service and ton tanks up to 500 psig, not for flammable gas. */
export const guidelineScope = 'AHRI Guideline K covers non-flammable refrigerants in cylinders to 400 psig service';
/** Water at 77 °F, kg/m3: turns a density into the specific gravity that the guideline means, and a water capacity in mass into a volume. */
export const waterDensity77 = 997.05;
/** Water at 60 °F, kg/m3: a collar stamps the water that the cylinder holds at that temperature. */
export const waterDensityStamp = 999.0;

/** Liquid must not fill a cylinder at any temperature up to and including 131 °F (49 CFR 173.304(b)). */
export const hottestCylinder = fahrenheit(131);
export const liquidFullRule: Fact = fact(
  'share',
  1,
  1,
  '49 CFR 173.304(b): not liquid-full at any temperature up to 131 degF',
  'published',
);
/** Our own margin under it: recovered liquid holds oil, which expands differently. */
export const liquidFillMost: Fact = fact(
  'share',
  0.95,
  0.95,
  'liquid at most 95 % of the cylinder at 131 degF: a margin under 49 CFR 173.304(b)',
  'practice',
);
/** Pressure at 131 °F at most 5/4 of the marked service pressure (49 CFR 173.301a(d)). */
export const pressureShare: Fact = fact(
  'share',
  1.25,
  1.25,
  '49 CFR 173.301a(d): pressure at 131 degF at most 5/4 of the service pressure',
  'published',
);
/** Burnt or oily gas: many shops take another tenth off. */
export const oilyDerate: Fact = fact(
  'share',
  0.9,
  0.9,
  'another 10 % off for oily gas: common practice, no source',
  'practice',
);

/** Usual marked service pressures of welded recovery cylinders, Pa gauge. */
export const cylinderServicePressures: readonly number[] = [260 * psi, 350 * psi, 400 * psi];

/** Filling densities of 49 CFR 173.304a(a)(2): most mass of gas by the mass of water that the cylinder holds. */
const fillingDensities: Readonly<Record<string, number>> = {
  'R-22': 1.05,
  'R-12': 1.19,
  'R-115': 1.1,
  'R-142b': 1.0,
  'R-13': 1.0,
  'R-717': 0.54,
};
export const fillingDensitySource = '49 CFR 173.304a(a)(2), table of filling densities';

/** The regulation's filling density for a refrigerant that it lists, else undefined. */
export const fillingDensity = (refrigerant: string): number | undefined => fillingDensities[refrigerant];

/** Only high-pressure cylinders of seamless steel take these: they are near or above their critical point in the sun. */
export const highPressureOnly: readonly string[] = ['R-13', 'R-23', 'R-503', 'R-508A', 'R-508B', 'R-744'];

/** Least period between retests of welded cylinders (4B, 4BA, 4BW), years; 7, 10 or 12 by paragraphs (e), (f) and (j). */
export const retestYears: Fact = fact('count', 5, 5, '49 CFR 180.209(a) table 1', 'published');

export interface CommonRecoveryCylinder {
  readonly name: string;
  /** Water capacity in lb as usually stamped; the collar of the one in hand counts. */
  readonly waterCapacityPounds: number;
  readonly tarePounds: number;
}

/** From memory of the trade: never a limit, only a help to think with; the collar's figures differ by maker. */
export const commonRecoveryCylinders: readonly CommonRecoveryCylinder[] = [
  { name: '30 lb', waterCapacityPounds: 26.2, tarePounds: 24 },
  { name: '50 lb', waterCapacityPounds: 47.7, tarePounds: 28 },
  { name: '125 lb', waterCapacityPounds: 123, tarePounds: 60 },
  { name: '1000 lb', waterCapacityPounds: 1000, tarePounds: 380 },
];
export const commonRecoveryCylindersConfidence: Confidence = 'memory';
/** A recovery cylinder is evacuated before its first use or a change of refrigerant. */
export const cylinderEvacuation: Fact = fact(
  'pressure',
  133.322,
  133.322,
  '1000 micron before first use: common practice, no source',
  'practice',
);
