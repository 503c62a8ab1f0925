import type { Kind } from './quantity';

/** Which zero a pressure reading counts from. A unit without one measures only differences of pressure. */
export type Reference = 'absolute' | 'gauge' | 'vacuum';

/** A unit of the trade. SI value = written value x `factor` + `offset`; for gauge and vacuum the atmosphere comes in. */
export interface Unit {
  readonly name: string;
  /** Every way to write it in a plan, `name` first. */
  readonly spellings: readonly string[];
  /** What it can measure; the first kind is the one meant when nothing else says so. */
  readonly kinds: readonly Kind[];
  readonly factor: number;
  readonly offset?: number;
  readonly reference?: Reference;
  readonly system: 'inch-pound' | 'si' | 'both';
  readonly example?: string;
}

// Exact by definition: international inch and avoirdupois pound (1959), US gallon of 231 in3, standard gravity,
// thermochemistry's International Table Btu. Source: NIST Special Publication 811, appendix B.
const inch = 0.0254;
const foot = 12 * inch;
const pound = 0.45359237;
const ounce = pound / 16;
const gallon = 231 * inch ** 3;
const fluidOunce = gallon / 128;
const poundForce = pound * 9.80665;
const psi = poundForce / inch ** 2;
const btu = 1055.05585262;
const torr = 101325 / 760;
/** Conventional inch of mercury at 0 degC, Pa. Source: NIST SP 811, appendix B.8. */
const inchOfMercury = 3386.389;
/** Conventional inch of water, Pa. Source: NIST SP 811, appendix B.8. */
const inchOfWater = 249.08891;

type System = Unit['system'];
type Row = readonly [spellings: string, kinds: string, factor: number, system: System, extra?: Partial<Unit>];

const pressureBoth = 'pressure pressure-difference';

/** Spellings stand apart by `|`, kinds by a blank. */
const rows: readonly Row[] = [
  ['in', 'length', inch, 'inch-pound', { example: '1-1/8 in' }],
  ['ft', 'length altitude', foot, 'inch-pound', { example: '62 ft 6 in' }],
  ['yd', 'length', 3 * foot, 'inch-pound'],
  ['mm', 'length', 0.001, 'si', { example: '22 mm' }],
  ['cm', 'length', 0.01, 'si'],
  ['m', 'length altitude', 1, 'si', { example: '15 m' }],

  ['in2|in²', 'area', inch ** 2, 'inch-pound'],
  ['ft2|ft²', 'area', foot ** 2, 'inch-pound'],
  ['mm2|mm²', 'area', 1e-6, 'si'],
  ['cm2|cm²', 'area', 1e-4, 'si'],
  ['m2|m²', 'area', 1, 'si', { example: '24 m2' }],

  ['fl-oz', 'volume', fluidOunce, 'inch-pound', { example: '54 fl-oz' }],
  ['pt', 'volume', gallon / 8, 'inch-pound'],
  ['qt', 'volume', gallon / 4, 'inch-pound'],
  ['gal', 'volume', gallon, 'inch-pound', { example: '2 gal' }],
  ['in3|in³', 'volume', inch ** 3, 'inch-pound'],
  ['ft3|ft³', 'volume', foot ** 3, 'inch-pound', { example: '2200 ft3' }],
  // A volume that a gas would take at 70 degF and 1 atm; as a volume it is a cubic foot.
  ['scf', 'volume', foot ** 3, 'inch-pound', { example: '250 scf' }],
  ['mL', 'volume', 1e-6, 'si'],
  ['cm3|cm³', 'volume', 1e-6, 'si'],
  ['L', 'volume', 0.001, 'si', { example: '1.6 L' }],
  ['m3|m³', 'volume', 1, 'si', { example: '62 m3' }],

  ['oz', 'mass', ounce, 'inch-pound', { example: '7 lb 4 oz' }],
  ['lb', 'mass', pound, 'inch-pound', { example: '7 lb 4 oz' }],
  ['g', 'mass', 0.001, 'si'],
  ['kg', 'mass', 1, 'si', { example: '3.3 kg' }],

  ['s', 'time', 1, 'both', { example: '30..90 s' }],
  ['min', 'time', 60, 'both', { example: '30 min' }],
  ['h', 'time', 3600, 'both', { example: '24 h' }],
  ['days|day', 'time', 86400, 'both', { example: '3 days' }],
  ['weeks|week', 'time', 604800, 'both'],

  ['degF|°F', 'temperature', 5 / 9, 'inch-pound', { offset: 459.67 * (5 / 9), example: '81 degF' }],
  ['degC|°C', 'temperature', 1, 'si', { offset: 273.15, example: '27 degC' }],
  ['K', 'temperature temperature-difference', 1, 'si'],
  ['Δ°F|deltaF', 'temperature-difference', 5 / 9, 'inch-pound', { example: '8 Δ°F' }],
  ['Δ°C|deltaC', 'temperature-difference', 1, 'si', { example: '5 Δ°C' }],

  ['psig', 'pressure', psi, 'inch-pound', { reference: 'gauge', example: '450 psig' }],
  ['psia', 'pressure', psi, 'inch-pound', { reference: 'absolute' }],
  ['inHg', pressureBoth, inchOfMercury, 'inch-pound', { reference: 'vacuum', example: '10 inHg' }],
  [
    'micron|microns|micron absolute',
    pressureBoth,
    torr / 1000,
    'both',
    { reference: 'absolute', example: '500 micron' },
  ],
  ['torr|torr absolute|mmHg absolute', pressureBoth, torr, 'both', { reference: 'absolute' }],
  ['mbar|mbar absolute', pressureBoth, 100, 'si', { reference: 'absolute' }],
  ['kPa gauge', 'pressure', 1e3, 'si', { reference: 'gauge', example: '690 kPa gauge' }],
  ['MPa gauge', 'pressure', 1e6, 'si', { reference: 'gauge', example: '3.1 MPa gauge' }],
  ['bar gauge', 'pressure', 1e5, 'si', { reference: 'gauge' }],
  ['Pa absolute', 'pressure', 1, 'si', { reference: 'absolute', example: '66.7 Pa absolute' }],
  ['kPa absolute', 'pressure', 1e3, 'si', { reference: 'absolute' }],
  ['MPa absolute', 'pressure', 1e6, 'si', { reference: 'absolute' }],
  ['bar absolute', 'pressure', 1e5, 'si', { reference: 'absolute' }],
  ['kPa vacuum', 'pressure', 1e3, 'si', { reference: 'vacuum', example: '34 kPa vacuum' }],
  ['psi', 'pressure-difference', psi, 'inch-pound', { example: '2 psi' }],
  ['inH2O', 'pressure-difference', inchOfWater, 'inch-pound'],
  ['Pa', 'pressure-difference', 1, 'si'],
  ['kPa', 'pressure-difference', 1e3, 'si', { example: '14 kPa' }],
  ['MPa', 'pressure-difference', 1e6, 'si'],
  ['bar', 'pressure-difference', 1e5, 'si'],

  ['cfm|ft3/min', 'volume-flow conductance', foot ** 3 / 60, 'inch-pound', { example: '6 cfm' }],
  ['cfh|ft3/h', 'volume-flow', foot ** 3 / 3600, 'inch-pound', { example: '5 cfh' }],
  ['scfm', 'volume-flow', foot ** 3 / 60, 'inch-pound'],
  ['scfh', 'volume-flow', foot ** 3 / 3600, 'inch-pound'],
  ['gal/min|gpm', 'volume-flow', gallon / 60, 'inch-pound'],
  ['fl-oz/min', 'volume-flow', fluidOunce / 60, 'inch-pound', { example: '16 fl-oz/min' }],
  ['mL/min', 'volume-flow', 1e-6 / 60, 'si'],
  ['L/min', 'volume-flow', 0.001 / 60, 'si', { example: '2.4 L/min' }],
  ['L/s', 'volume-flow conductance', 0.001, 'si', { example: '2.8 L/s' }],
  ['m3/h|m³/h', 'volume-flow conductance', 1 / 3600, 'si'],
  ['m3/s|m³/s', 'volume-flow conductance', 1, 'si'],

  ['lb/min', 'mass-flow', pound / 60, 'inch-pound', { example: '8.3 lb/min' }],
  ['lb/h', 'mass-flow', pound / 3600, 'inch-pound'],
  ['oz/min', 'mass-flow', ounce / 60, 'inch-pound'],
  ['g/s', 'mass-flow', 0.001, 'si'],
  ['g/min', 'mass-flow', 0.001 / 60, 'si'],
  ['kg/min', 'mass-flow', 1 / 60, 'si'],
  ['kg/h', 'mass-flow', 1 / 3600, 'si'],
  ['kg/s', 'mass-flow', 1, 'si'],

  ['ft/min|fpm', 'velocity', foot / 60, 'inch-pound', { example: '1500 ft/min' }],
  ['ft/s', 'velocity', foot, 'inch-pound'],
  ['m/s', 'velocity', 1, 'si', { example: '7.6 m/s' }],

  ['lb/ft3|lb/ft³', 'density', pound / foot ** 3, 'inch-pound'],
  ['lb/gal', 'density', pound / gallon, 'inch-pound'],
  ['kg/m3|kg/m³', 'density charge-per-volume', 1, 'si'],
  ['kg/L', 'density', 1000, 'si', { example: '1.27 kg/L' }],
  ['g/cm3|g/cm³|g/mL', 'density', 1000, 'si'],
  // A thousand cubic feet, in which concentration limits of rooms are given.
  ['lb/Mcf', 'charge-per-volume', pound / (1000 * foot ** 3), 'inch-pound', { example: '4.8 lb/Mcf' }],
  ['g/m3|g/m³', 'charge-per-volume', 0.001, 'si'],

  ['oz/ft', 'mass-per-length', ounce / foot, 'inch-pound', { example: '0.6 oz/ft' }],
  ['lb/ft', 'mass-per-length', pound / foot, 'inch-pound'],
  ['g/m', 'mass-per-length', 0.001, 'si', { example: '56 g/m' }],
  ['kg/m', 'mass-per-length', 1, 'si'],

  ['Btu/h', 'power', btu / 3600, 'inch-pound', { example: '36000 Btu/h' }],
  // Mechanical horsepower: 550 ft lbf/s.
  ['hp', 'power', 550 * foot * poundForce, 'inch-pound'],
  ['W', 'power', 1, 'si'],
  ['kW', 'power', 1e3, 'si', { example: '10.5 kW' }],

  ['Btu', 'energy', btu, 'inch-pound'],
  ['ft-lbf', 'energy', foot * poundForce, 'inch-pound'],
  ['J', 'energy', 1, 'si'],
  ['kJ', 'energy', 1e3, 'si'],
  ['kWh', 'energy', 3.6e6, 'both'],
  ['Btu/lb', 'enthalpy', btu / pound, 'inch-pound'],
  ['J/kg', 'enthalpy', 1, 'si'],
  ['kJ/kg', 'enthalpy', 1e3, 'si'],

  ['%', 'share', 0.01, 'both', { example: '15 %' }],
  ['ppm', 'share', 1e-6, 'both', { example: '50 ppm' }],
  ['mgKOH/g', 'acid-number', 1, 'both', { example: '0.05 mgKOH/g' }],

  ['in-lb', 'torque', inch * poundForce, 'inch-pound'],
  ['ft-lb', 'torque', foot * poundForce, 'inch-pound', { example: '30 ft-lb' }],
  ['N·m|N-m', 'torque', 1, 'si', { example: '41 N·m' }],

  ['cP|mPa·s', 'viscosity', 0.001, 'both'],
  ['Pa·s', 'viscosity', 1, 'si'],
];

/** All units that a plan may use, inch-pound and SI side by side. */
export const units: readonly Unit[] = rows.map(([written, kinds, factor, system, extra]) => {
  const spellings = written.split('|');
  return { name: spellings[0] ?? written, spellings, kinds: kinds.split(' ') as Kind[], factor, system, ...extra };
});

/** Every spelling of every unit, the two-word ones included: what a reader of text must know to find a quantity. */
export const unitWords: readonly string[] = units.flatMap((unit) => unit.spellings);

const bySpelling = new Map<string, Unit>();
for (const unit of units) for (const spelling of unit.spellings) bySpelling.set(spelling, unit);

/** Look-alike signs that keyboards and copied text give, and the sign that is meant. */
const lookAlikes: Readonly<Record<string, string>> = { '∆': 'Δ', º: '°', '˚': '°', '⋅': '·', '•': '·' };

/** One sign for one meaning, and single blanks: the form in which spellings are compared. */
export const plainSpelling = (spelling: string): string =>
  spelling
    .replace(/[∆º˚⋅•]/g, (sign) => lookAlikes[sign] ?? sign)
    .replace(/\s+/g, ' ')
    .trim();

/** The unit of a spelling, or undefined. Capitals count: `mm` is not `MM`. */
export const unitNamed = (spelling: string): Unit | undefined =>
  bySpelling.get(spelling) ?? bySpelling.get(plainSpelling(spelling));
