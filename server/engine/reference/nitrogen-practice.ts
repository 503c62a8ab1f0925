import { fact } from './fact';
import { cubicFeetPerHour, cubicFeetPerMinute, fahrenheit, minute, psi, psig } from './table-units';

/** Standard ft3 of gas are counted at 70 °F and 14.696 psia. */
export const standardTemperature = fahrenheit(70);
/** Gas constant of nitrogen, J/(kg K): 8.314462618 over a molar mass of 28.0134 g/mol. */
export const nitrogenGasConstant = 8.314462618 / 28.0134e-3;
/** Ratio of specific heats near room conditions. */
export const nitrogenHeatRatio = 1.4;
/** Density at 70 °F and one atmosphere, kg/m3: the reference equation gives 0.07244 lb/ft3. */
export const nitrogenStandardDensity = fact(
  'density',
  1.1604,
  1.1604,
  'reference equation of state of nitrogen (Span and others, 2000) at 70 degF, 1 atm',
  'computed',
);

/** Flow while brazing that covers the usual tube sizes. */
export const brazingFlow = fact(
  'volume-flow',
  2 * cubicFeetPerHour,
  10 * cubicFeetPerHour,
  '2 to 10 cfh, felt on a wet lip: common practice, no source',
  'practice',
);
export const brazingFlowUsual = fact(
  'volume-flow',
  3 * cubicFeetPerHour,
  5 * cubicFeetPerHour,
  '3 to 5 cfh for 3/8 to 7/8 in: common practice, no source',
  'practice',
);
export const brazingFlowMilitary = fact(
  'volume-flow',
  cubicFeetPerMinute,
  2 * cubicFeetPerMinute,
  'under 1 to 2 cfm: Army TM 9-4120-380-14',
  'published',
);
export const brazingPressureOpenEnd = fact(
  'pressure-difference',
  psi,
  2 * psi,
  '1 to 2 psig at an open end: Army TM 5-4120-259-15',
  'published',
);
/** Torch and cooling time at a joint: heat-up, braze, and flow kept until it is cool to the hand. */
export const brazingTimePerJoint = fact(
  'time',
  5 * minute,
  10 * minute,
  '5 to 10 minutes a joint with its cooling: common practice, no source',
  'practice',
);
export const brazingVolumeChanges = fact(
  'count',
  5,
  10,
  '5 to 10 volume changes before the torch: common practice, no source',
  'practice',
);

export const blowOutPressure = fact(
  'pressure',
  psig(50),
  psig(50),
  'Army TM 9-4120-360-14: 50 psig for at least 30 s on each leg',
  'published',
);
export const blowOutTime = fact('time', 30, 30, 'Army TM 9-4120-360-14: at least 30 s on each leg', 'published');
export const finalPurgePressure = fact(
  'pressure',
  psig(100),
  psig(100),
  'final purge near 100 psig: common practice, no source',
  'practice',
);
export const purgePressureMost = fact(
  'pressure',
  psig(200),
  psig(200),
  'Army TM 9-4120-380-14: regulator at most 200 psig while purging',
  'published',
);
export const dryingPurgeFlow = fact(
  'volume-flow',
  cubicFeetPerMinute,
  2 * cubicFeetPerMinute,
  'Army TM 9-4120-357-14: 1 to 2 cfm',
  'published',
);
export const dryingPurgeTime = fact(
  'time',
  30 * minute,
  30 * minute,
  'Army TM 9-4120-357-14: at least 30 minutes',
  'published',
);
export const vacuumBreakHold = fact(
  'time',
  15 * minute,
  60 * minute,
  '15 to 60 minutes: common practice, no source',
  'practice',
);
export const holdingChargePressure = fact(
  'pressure',
  psig(5),
  psig(10),
  '5 to 10 psig: common practice, no source',
  'practice',
);

/** Volume changes after which a purged line counts as clear: one if the gas moves as a plug, e^-n left if it mixes. */
export const purgeVolumeChanges = fact(
  'count',
  5,
  10,
  '5 to 10 volume changes: common practice, no source',
  'practice',
);

/** Discharge coefficient of a crimped, choked or sawn-off opening: sharp-edged 0.6 to well-rounded 0.9. */
export const openingCoefficient = fact(
  'share',
  0.6,
  0.9,
  'sharp-edged to rounded opening, text-book range: from memory',
  'memory',
);
/** Regulators of the trade pass no more than this into an open line, whatever the opening. */
export const regulatorMostFlow = fact(
  'volume-flow',
  40 * cubicFeetPerMinute,
  60 * cubicFeetPerMinute,
  'what a usual two-stage regulator passes near 100 psig, an estimate: common practice, no source',
  'practice',
);
/** A cylinder is changed at about this pressure, and earlier where a step asks for more. */
export const cylinderChangePressure = fact(
  'pressure',
  psig(200),
  psig(200),
  'change the cylinder at about 200 psig: common practice, no source',
  'practice',
);
/** Air dry enough for test and purge gas. */
export const nitrogenDewPoint = fact(
  'temperature',
  fahrenheit(-70),
  fahrenheit(-70),
  'federal guide specification 15652A: dew point at most -70 degF',
  'published',
);

/** Oxygen share of clean air, and below which a space is deficient (29 CFR 1910.146). */
export const oxygenInAir = fact('share', 0.2095, 0.2095, 'composition of dry air, from memory', 'memory');
export const oxygenLeast = fact('share', 0.195, 0.195, '29 CFR 1910.146: deficient below 19.5 %', 'published');
export const oxygenMost = fact('share', 0.235, 0.235, '29 CFR 1910.146: enriched above 23.5 %', 'published');

/** Gas and tube stand at this temperature when the site says nothing. */
export const gasTemperature = fact(
  'temperature',
  fahrenheit(70),
  fahrenheit(70),
  'reference temperature of the trade',
  'practice',
);
