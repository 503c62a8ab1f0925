import { fact } from './fact';
import type { Confidence } from './source';
import { celsius, fahrenheit, fahrenheitDifference, hour, inch, minute, psi, psig } from './table-units';

/** First stage: low enough to find an open joint with bubbles, high enough to show one. */
export const firstStage = fact(
  'pressure',
  psig(10),
  psig(10),
  'federal guide specification 15652A: 10 psig, every joint soaped',
  'published',
);
/** Above this the pressure is raised in steps of a tenth of the test pressure. */
export const stagesAbove = fact(
  'pressure',
  psig(100),
  psig(100),
  'federal guide specification 15652A: above 100 psig in steps of 10 %',
  'published',
);
export const stageShare = fact('share', 0.1, 0.1, 'federal guide specification 15652A: steps of 10 %', 'published');
/** The stages that the trade stops at on the way to a test of 300 psig and more. */
export const tradeStages: readonly number[] = [psig(10), psig(150), psig(300)];
export const tradeStagesConfidence: Confidence = 'practice';
/** Not more than this over the least that the code asks. */
export const overshootMost = fact(
  'share',
  1.25,
  1.25,
  'federal guide specification 15652A: at most 25 % over the required minimum',
  'published',
);
export const testHold = fact(
  'time',
  10 * minute,
  24 * hour,
  '10 minutes (field form after ASHRAE 15) to 24 h (federal guide specification 15652A)',
  'published',
);
/** Compression heat: the reading is taken after the gas has taken the tube's temperature. */
export const settleTime = fact(
  'time',
  10 * minute,
  30 * minute,
  '10 to 30 minutes after filling: common practice, no source',
  'practice',
);
/** What a gauge and a clamp thermometer of the trade can tell. */
export const gaugeResolution = fact(
  'pressure-difference',
  psi,
  psi,
  'a usual gauge: common practice, no source',
  'practice',
);
export const temperatureUncertainty = fact(
  'temperature-difference',
  fahrenheitDifference,
  fahrenheitDifference,
  'a usual clamp thermometer: common practice, no source',
  'practice',
);
/** The fixed correction of the federal guide specification, right only near 150 psig. Pa/K. */
export const fixedSlope = {
  value: (0.3 * psi) / fahrenheitDifference,
  source: 'federal guide specification 15182: 0.3 psi per degF',
  confidence: 'published' as Confidence,
};

/** Least temperatures for the design pressure by ASHRAE 15 section 9.2.1, from memory. K. */
export const designTemperatures = {
  low: fahrenheit(80),
  highWater: fahrenheit(104),
  highAir: fahrenheit(122),
  source: 'ASHRAE 15 section 9.2.1: low side 80 degF, high side 104 degF (water) and 122 degF (air) at least',
  confidence: 'memory' as Confidence,
} as const;
export const leastDesignPressure = psig(15);
/** High-side design temperatures of EN 378-2 table 2 by ambient zone of 32, 38, 43 and 55 °C, air-cooled, K. */
export const europeanHighSide: readonly (readonly [ambient: number, design: number])[] = [
  [celsius(32), celsius(55)],
  [celsius(38), celsius(59)],
  [celsius(43), celsius(63)],
  [celsius(55), celsius(67)],
];

/** The relief is set between the test pressure and the weakest part; these margins keep it from chattering and from being late. */
export const reliefAboveTest = fact(
  'pressure-difference',
  5 * psi,
  5 * psi,
  'set at least 5 psi above the test so that it does not weep: common practice, no source',
  'practice',
);
export const reliefBelowWeakest = fact(
  'share',
  0.96,
  0.96,
  'set at most 96 % of the weakest rating, for the tolerance of its setting: common practice, no source',
  'practice',
);
/** Tracer in nitrogen: at most this share of refrigerant by mass. */
export const tracerMost = fact(
  'share',
  0.05,
  0.05,
  'ASHRAE 15 interim action, 10.1.2: at most 5 % by mass',
  'published',
);
/** Systems of copper up to this diameter with an A1 refrigerant may be tested with their own charge. */
export const smallSystemTube = fact(
  'length',
  0.62 * inch,
  0.62 * inch,
  'field test form after ASHRAE 15, 10.1.2',
  'published',
);

/** Energy of one kilogram of TNT, J, and the scaled distance in m/kg^(1/3) at which nobody is hurt by the blast. */
export const tntEnergy = 4.184e6;
export const scaledDistance = fact(
  'count',
  20,
  20,
  'ASME PCC-2 article 501 style scaling, 20 m per cube root of kg TNT: from memory',
  'memory',
);
/** Fragments: nobody nearer than this to a test above 100 psig, whatever the volume. */
export const leastDistance = fact(
  'length',
  3,
  3,
  'at least 3 m (10 ft) from caps and hose ends: common practice, no source',
  'practice',
);
