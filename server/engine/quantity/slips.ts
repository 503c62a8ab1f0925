import { nearest } from './nearest';
import { unitNamed, unitWords } from './units';

/** For a unit what people write instead of it, set apart by `|`. */
const slips: Readonly<Record<string, string>> = {
  in: '"|”|″|inch|inches',
  ft: "'|’|′|foot|feet",
  lb: '#|lbs|pound|pounds',
  oz: 'ounce|ounces',
  g: 'gram|grams',
  kg: 'kilo|kgs|kilos',
  s: 'sec|secs|second|seconds',
  min: 'mins|minute|minutes',
  h: 'hr|hrs|hour|hours',
  days: 'd',
  weeks: 'wk|wks',
  degF: 'F|f|deg|deg F|°|F°|Fahrenheit|fahrenheit',
  degC: 'C|c|deg C|C°|Celsius|celsius',
  'Δ°F': 'dF|ΔF|F deg|°F difference|degF difference|F difference|°F diff',
  'Δ°C': 'dC|ΔC|C deg|°C difference|degC difference|C difference|°C diff',
  '%': 'percent|pct',
  micron: 'um|µm|μm|µ|μ|mTorr|mtorr|millitorr',
  inHg: 'in Hg|"Hg|" Hg|inHg vacuum|in Hg vacuum|in Hg vac|inHg vac|inches Hg|"hg',
  inH2O: 'inWC|in WC|in wc|inwc|"WC|" WC|in H2O|"H2O|iwc',
  'fl-oz': 'fl oz|floz|fluid ounces|fluid ounce',
  'ft-lb': 'ft lb|ft-lbs|ft lbs|lbf-ft|lb-ft|lbs-ft|foot-pounds|ft lbf',
  'in-lb': 'in lb|in-lbs|in lbs|lbf-in|lb-in|inch-pounds',
  N·m: 'Nm',
  ft3: 'cu ft|cuft|cf|CF|cubic feet|cubic foot',
  in3: 'cu in|cuin|cubic inches',
  cm3: 'cc',
  ft2: 'sq ft|sqft|square feet',
  gal: 'gallon|gallons|US gal|US gallon|US gallons',
  'lb/ft3': 'pcf',
  'lb/Mcf': 'lb/1000 ft3|lb per Mcf',
  'g/cm3': 'g/cc',
  L: 'l|liter|liters|litre|litres',
  mL: 'ml',
  'L/min': 'lpm|LPM|l/min',
  scfh: 'SCFH',
  'Btu/h': 'btuh|BTUH|BTU/hr|Btu/hr|BTU/h|btu/h|btu/hr|Btuh',
  Btu: 'BTU',
  'bar gauge': 'barg|bar g|bar(g)|bar (g)|bar-g|Bar g|Barg',
  'bar absolute': 'bara|bar a|bar(a)|bar (a)|bar abs|bar-a',
  'kPa gauge': 'kPag|kPa g|kPa(g)|kPa (g)',
  'kPa absolute': 'kPaa|kPa a|kPa(a)|kPa abs|kPa (a)',
  'MPa gauge': 'MPag|MPa g|MPa(g)',
  'MPa absolute': 'MPaa|MPa abs',
  'Pa absolute': 'Pa abs|Paa',
  mbar: 'mbara|mbar a|mbar abs|hPa',
  psig: 'psi gauge|psi(g)|psi g|psi (g)|lb/in2 g',
  psia: 'psi absolute|psi abs|psi(a)|psi a',
  psi: 'psid|psi diff|psi difference|lb/in2',
  torr: 'Torr|mmHg|mm Hg|mmHg abs|mm Hg abs',
  m: 'meter|meters|metre|metres',
  W: 'watt|watts',
  hp: 'horsepower',
};

/**
 * Words for which a figure must be worked out: the unit, and how many of it. A ton of refrigeration is 12,000 Btu/h; a bare
 * ton may also be a weight, so that it is never read as either.
 */
const workedOut: Readonly<Record<string, readonly [unit: string, times: number]>> = {
  ton: ['Btu/h', 12000],
  tons: ['Btu/h', 12000],
  TR: ['Btu/h', 12000],
  RT: ['Btu/h', 12000],
  MBH: ['Btu/h', 1000],
  'kBtu/h': ['Btu/h', 1000],
  'kBTU/h': ['Btu/h', 1000],
  'kBtu/hr': ['Btu/h', 1000],
  kBtuh: ['Btu/h', 1000],
  atm: ['psia', 14.696],
};

const bySlip = new Map<string, readonly [unit: string, times: number]>(Object.entries(workedOut));
for (const [unit, words] of Object.entries(slips)) for (const word of words.split('|')) bySlip.set(word, [unit, 1]);

/** The unit that an unknown word most likely means, with the number to multiply the figure by; undefined for none near. */
export function meantUnit(word: string): readonly [unit: string, times: number] | undefined {
  const plain = word.replaceAll('.', '').replace(/\s+/g, ' ').trim();
  const usual = bySlip.get(word) ?? bySlip.get(plain);
  if (usual !== undefined) return usual;
  if (unitNamed(plain) !== undefined) return [plain, 1];
  const near = nearest(plain, unitWords);
  // One slip in two letters may be any unit (Hz is no oz); only capitals are told apart there.
  if (near === undefined || (plain.length <= 2 && near.toLowerCase() !== plain.toLowerCase())) return undefined;
  return [near, 1];
}
