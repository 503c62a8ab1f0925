import { fact } from './fact';

/** Old oil that may be left, as a share of all the oil. */
export const oldOilAccepted = fact(
  'share',
  0.05,
  0.05,
  'UN environment guide on HCFC alternatives: 5 % often acceptable',
  'published',
);
export const oldOilPreferred = fact(
  'share',
  0.01,
  0.01,
  'UN environment guide on HCFC alternatives: 1 % preferred',
  'published',
);
export const oldOilLowTemperature = fact(
  'share',
  0.01,
  0.03,
  '1 to 3 % with large lift or low temperature: from memory',
  'memory',
);
/** What stays behind when oil is drained through its plugs. */
export const leftByDrain = fact(
  'share',
  0.2,
  0.5,
  'UN environment guide on HCFC alternatives: 20 to 50 % often remains',
  'published',
);
/** Moisture of a system with POE, as a share by mass. */
export const waterInPolyolester = fact('share', 50e-6, 50e-6, 'refrigeration textbook: under 50 ppm', 'published');

/** Acid number above which a burnout is severe (mineral oil practice). */
export const acidSevere = fact('acid-number', 0.05, 0.05, 'Army TM 5-4120-285-15: above 0.05 mg KOH/g', 'published');
/** Fresh POE carries weak acids of its own, so that its alarm lies higher. */
export const acidPolyolester = fact('acid-number', 0.1, 0.2, '0.1 to 0.2 mg KOH/g: from memory', 'memory');
/** The suction drier of a clean-up comes out within this time. */
export const suctionDrierOut = fact(
  'time',
  3 * 86400,
  3 * 86400,
  'within about 3 days: personal training notes',
  'practice',
);
export const oilSampleAfter = fact(
  'time',
  24 * 3600,
  48 * 3600,
  '24 to 48 h after start: common practice, no source',
  'practice',
);
export const acidTestsApart = fact(
  'time',
  24 * 3600,
  24 * 3600,
  'two clean tests at least 24 h apart: common practice, no source',
  'practice',
);
