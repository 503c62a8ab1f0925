import { type Fact, fact } from './fact';
import { fahrenheit, hour, micron, minute, psig } from './table-units';

export const finalLevel = fact(
  'pressure',
  500 * micron,
  500 * micron,
  'at most 500 micron: common practice (a training page; no authority)',
  'practice',
);
export const guideSpecificationLevel = fact(
  'pressure',
  300 * micron,
  300 * micron,
  'federal guide specification 15182: 300 micron',
  'published',
);
export const polyolesterLevel = fact(
  'pressure',
  250 * micron,
  300 * micron,
  '250 to 300 micron for POE racks and low temperature: common practice, no source',
  'practice',
);

/** A rule for the rise of the level after the pump is shut off: from at most `from`, to at most `to`, in `time`. */
export interface DecayRule {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  readonly time: number;
  readonly source: string;
  readonly confidence: Fact['confidence'];
}

export const decayRules: readonly DecayRule[] = [
  {
    name: 'guide-specification',
    from: 300 * micron,
    to: 500 * micron,
    time: hour,
    source: 'federal guide specification 15182: 300 micron, at most 500 after 1 h',
    confidence: 'published',
  },
  {
    name: 'residential',
    from: 500 * micron,
    to: 1000 * micron,
    time: 10 * minute,
    source: 'at most 1000 micron after 10 minutes: common practice, no source',
    confidence: 'practice',
  },
  {
    name: 'strict',
    from: 500 * micron,
    to: 700 * micron,
    time: 15 * minute,
    source: 'at most 200 micron more in 15 minutes: common practice, no source',
    confidence: 'practice',
  },
  {
    name: 'polyolester',
    from: 300 * micron,
    to: 500 * micron,
    time: 30 * minute,
    source: 'at most 500 micron after 30 to 60 minutes: common practice, no source',
    confidence: 'practice',
  },
];

/** Whether a decay reading meets a rule: started at or below `from`, ended at or below `to`, after at least `time`. */
export const decayPasses = (rule: DecayRule, start: number, end: number, seconds: number): boolean =>
  start <= rule.from + 1e-9 && end <= rule.to + 1e-9 && seconds >= rule.time - 1e-9;

/** Between these two a decay that levels off means water. */
export const wetPlateau = fact(
  'pressure',
  1000 * micron,
  5000 * micron,
  'deep-vacuum training page: levels off at 1000 to 2000 micron when wet; to 5000 with solvent or oil',
  'published',
);
/** Liquid water in the coldest machine that may be evacuated holds the level at this, so a test that lets it get there passes wet. */
export const waterAtFreezing = fact(
  'pressure',
  611.66,
  611.66,
  'vapour pressure of water: IAPWS SR1-86, handbook 8.3',
  'published',
);
/**
 * The shallowest last pull that any sheet asks for is that of vehicles, 29 inHg: 23400 micron at sea level (handbook 8.1).
 * A gauge of that kind reads to half an inch, which makes 36000 micron; a figure above is a slip.
 */
export const shallowestSheet = fact(
  'pressure',
  23400 * micron,
  36000 * micron,
  'vehicle training page: 29 inHg, less 1 inHg for each 1000 ft, handbook 8.1',
  'published',
);
/** Levels of the pulls of a triple evacuation, and what breaks them. */
export const tripleLevels: readonly Fact[] = [
  fact('pressure', 1500 * micron, 2000 * micron, 'first pull: common practice, no source', 'practice'),
  fact('pressure', 1000 * micron, 1500 * micron, 'second pull: common practice, no source', 'practice'),
  fact(
    'pressure',
    300 * micron,
    500 * micron,
    'third pull: common practice; 300 in federal guide specification 15741N',
    'practice',
  ),
];
/** Most that may stand in the circuit when a pump is opened to it. */
export const pumpInletMost = fact('pressure', psig(5), psig(5), 'about 5 psig: common practice, no source', 'practice');
/** Tube colder than this keeps ice that no pump takes off in the time of a job. */
export const coldestTube = fact(
  'temperature',
  fahrenheit(35),
  fahrenheit(35),
  'federal guide specification 15182: above 35 degF',
  'published',
);
/** Below about this level the old refrigerant counts as gone. */
export const refrigerantGone = fact(
  'pressure',
  5000 * micron,
  5000 * micron,
  'about 5000 micron: common practice, no source',
  'practice',
);
/** Best level of a usual pump blanked off with fresh oil. */
export const pumpUltimate = fact(
  'pressure',
  20 * micron,
  50 * micron,
  'about 50 micron blanked off: common practice, no source',
  'practice',
);
/** Gas ballast stays open down to this level. */
export const ballastTo = fact(
  'pressure',
  2500 * micron,
  2500 * micron,
  'about 2500 micron: common practice, no source',
  'practice',
);
