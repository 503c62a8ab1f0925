import { fact } from './fact';
import { fahrenheit, fahrenheitDifference, foot, minute } from './table-units';

const regulation = 'California Title 24 reference appendix RA3.2';

/** Liquid in the line is counted at this temperature when its own is not known. */
export const liquidLineTemperature = fact(
  'temperature',
  fahrenheit(95),
  fahrenheit(100),
  'line allowance counted at 95 to 100 degF of liquid: common practice, no source',
  'practice',
);
export const includedLength = fact(
  'length',
  15 * foot,
  15 * foot,
  'usually 15 ft, 25 ft with some: common practice, no source',
  'practice',
);
/** Below this length the vapour line's content is left out. */
export const vapourLineFrom = fact(
  'length',
  100 * foot,
  100 * foot,
  'vapour line counts from about 100 ft: common practice, no source',
  'practice',
);
export const outdoorsLeast = fact(
  'temperature',
  fahrenheit(55),
  fahrenheit(55),
  `${regulation}: outdoors at least 55 degF`,
  'published',
);
export const steadyTime = fact(
  'time',
  15 * minute,
  15 * minute,
  `${regulation}: 15 minutes of steady running`,
  'published',
);
export const superheatBand = fact(
  'temperature-difference',
  5 * fahrenheitDifference,
  5 * fahrenheitDifference,
  `${regulation}: within 5 degF of the target, fixed orifice`,
  'published',
);
export const subcoolingBand = fact(
  'temperature-difference',
  3 * fahrenheitDifference,
  3 * fahrenheitDifference,
  `${regulation}: within 3 degF of the target, expansion valve`,
  'published',
);
export const valveSuperheat = fact(
  'temperature-difference',
  4 * fahrenheitDifference,
  25 * fahrenheitDifference,
  `${regulation}: 4 to 25 degF with an expansion valve, installer`,
  'published',
);
export const valveSuperheatVerifier = fact(
  'temperature-difference',
  3 * fahrenheitDifference,
  26 * fahrenheitDifference,
  `${regulation}: 3 to 26 degF with an expansion valve, verifier`,
  'published',
);
/** Taken where the plate is silent. */
export const subcoolingDefault = fact(
  'temperature-difference',
  8 * fahrenheitDifference,
  12 * fahrenheitDifference,
  '8 to 12 degF where the plate is silent: common practice, no source',
  'practice',
);
/** Taken where a plan says nothing of superheat. */
export const superheatDefault = fact(
  'temperature-difference',
  8 * fahrenheitDifference,
  12 * fahrenheitDifference,
  '8 to 12 degF where the plan is silent: common practice, no source',
  'practice',
);
export const leastSuperheatTarget = fact(
  'temperature-difference',
  5 * fahrenheitDifference,
  5 * fahrenheitDifference,
  `${regulation}: a target under 5 degF is not valid`,
  'published',
);
/** Targets at a fixed orifice, by wet bulb and outdoor temperature: the ends of the table. */
export const orificeSuperheat = fact(
  'temperature-difference',
  5 * fahrenheitDifference,
  45 * fahrenheitDifference,
  'table of superheat at a fixed orifice, by return wet bulb and outdoor temperature: common printings, from memory',
  'memory',
);
/** A receiver that must hold a pump-down is not filled beyond this. */
export const receiverFill = fact(
  'share',
  0.8,
  0.9,
  '80 to 90 % of the receiver: common practice, no source',
  'practice',
);
/** First charge from the ratio of liquid densities, where no range is printed for the pair. */
export const firstChargeShare = fact(
  'share',
  0.9,
  0.9,
  '0.9 of the ratio of liquid densities at 77 degF: an estimate, no source',
  'practice',
);
/** A conversion is not charged beyond this share of the old charge without a look at the cause. */
export const conversionMost = fact(
  'share',
  1.1,
  1.1,
  'trim to at most 110 % of the old charge: trade and UN guides, from memory',
  'memory',
);
/** Readings are never asked tighter than gauge and chart. */
export const closestReading = fact(
  'temperature-difference',
  0.5 * fahrenheitDifference,
  0.5 * fahrenheitDifference,
  'charts differ by 0.5 degF',
  'practice',
);

export type ChargeVerdict = 'good' | 'add' | 'remove' | 'not-valid';

/** Verdict of a superheat reading at a fixed orifice; differences in K. */
export const superheatVerdict = (target: number, actual: number): ChargeVerdict => {
  if (target < leastSuperheatTarget.quantity.low - 1e-9) return 'not-valid';
  const off = actual - target;
  if (Math.abs(off) <= superheatBand.quantity.high + 1e-9) return 'good';
  return off > 0 ? 'add' : 'remove';
};

/** Verdict of a subcooling reading with an expansion valve; differences in K. */
export const subcoolingVerdict = (target: number, actual: number): ChargeVerdict => {
  const off = actual - target;
  if (Math.abs(off) <= subcoolingBand.quantity.high + 1e-9) return 'good';
  return off < 0 ? 'add' : 'remove';
};

/** Whether an expansion valve's superheat in K lies in the installer's (or verifier's) range. */
export const valveSuperheatPasses = (superheat: number, who: 'installer' | 'verifier'): boolean => {
  const { low, high } = (who === 'installer' ? valveSuperheat : valveSuperheatVerifier).quantity;
  return superheat >= low - 1e-9 && superheat <= high + 1e-9;
};
