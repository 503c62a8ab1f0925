import { nearest } from './nearest';
import { unitWords } from './units';

/** For a unit what people write instead of it, set apart by `|`. */
const slips: Readonly<Record<string, string>> = {
  in: '"|”|″|inch|inches',
  ft: "'|’|′|foot|feet",
  lb: '#|lbs|pound|pounds',
  oz: 'ounce|ounces',
  g: 'gram|grams',
  kg: 'kilo|kgs',
  s: 'sec|secs|second|seconds',
  min: 'mins|minute|minutes',
  h: 'hr|hrs|hour|hours',
  days: 'd',
  degF: 'F|f|deg|deg F|°',
  degC: 'C|c|deg C',
  '%': 'percent|pct',
  micron: 'um|µm|μm',
  inHg: 'in Hg|in. Hg|"Hg|inHg vacuum',
  'fl-oz': 'fl oz|floz',
  'ft-lb': 'ft lb|ft-lbs',
  'in-lb': 'in lb|in-lbs',
  N·m: 'Nm',
  ft3: 'cu ft|cuft|cf',
  ft2: 'sq ft|sqft',
  gal: 'gallon|gallons',
  L: 'l|liter|liters|litre|litres',
  mL: 'ml',
  'L/min': 'lpm',
  'Btu/h': 'btuh|BTUH|BTU/hr',
  Btu: 'BTU',
  'bar gauge': 'barg',
  'bar absolute': 'bara',
  'kPa gauge': 'kPag',
  'kPa absolute': 'kPaa',
  'MPa gauge': 'MPag',
  psig: 'psi gauge',
  psia: 'psi absolute',
  torr: 'Torr|mmHg',
  m: 'meter|meters|metre|metres',
  W: 'watt|watts',
};

/**
 * Words for which a figure must be worked out: the unit, and how many of it. A ton of refrigeration is 12,000 Btu/h; a bare
 * ton may also be a weight, so that it is never read as either.
 */
const workedOut: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  ton: ['Btu/h', 12000],
  tons: ['Btu/h', 12000],
  TR: ['Btu/h', 12000],
  MBH: ['Btu/h', 1000],
  atm: ['psia', 14.696],
};

const bySlip = new Map<string, readonly [unit: string, times: number]>(Object.entries(workedOut));
for (const [unit, words] of Object.entries(slips)) for (const word of words.split('|')) bySlip.set(word, [unit, 1]);

/** The unit that an unknown word most likely means, with the number to multiply the figure by; undefined for none near. */
export function meantUnit(word: string): readonly [unit: string, times: number] | undefined {
  const usual = bySlip.get(word);
  if (usual !== undefined) return usual;
  const near = nearest(word, unitWords);
  return near === undefined ? undefined : [near, 1];
}
