import { standardAtmosphere } from './atmosphere';
import type { Literal } from './literal';
import { type LiteralProblem, problem } from './problem';
import type { Kind, Quantity } from './quantity';
import { plainSpelling, type Unit, unitNamed, units } from './units';

export { atmosphereAt, standardAtmosphere } from './atmosphere';

/** A kind in the words of a message, with its article. */
const kindWords: Readonly<Record<Kind, string>> = {
  length: 'a length',
  altitude: 'an altitude',
  area: 'an area',
  volume: 'a volume',
  mass: 'a weight',
  time: 'a time',
  temperature: 'a temperature',
  'temperature-difference': 'a temperature difference',
  pressure: 'a pressure level',
  'pressure-difference': 'a pressure difference',
  'volume-flow': 'a flow by volume',
  'mass-flow': 'a flow by weight',
  velocity: 'a velocity',
  density: 'a density',
  'mass-per-length': 'a weight per length',
  power: 'a capacity',
  energy: 'an energy',
  share: 'a share',
  'acid-number': 'an acid number',
  torque: 'a torque',
  viscosity: 'a viscosity',
  count: 'a count',
  enthalpy: 'a heat content',
  conductance: 'a conductance',
  'charge-per-volume': 'a weight per room volume',
};

export const kindInWords = (kind: Kind): string => kindWords[kind];

/** Kinds of which less than nothing makes sense. */
const signed: ReadonlySet<Kind> = new Set([
  'altitude',
  'temperature',
  'temperature-difference',
  'pressure-difference',
  'energy',
  'enthalpy',
]);

/** The unit to write instead, where the sign of another reading or kind stands. */
const insteadOf: Readonly<Partial<Record<Kind, Readonly<Record<string, readonly string[]>>>>> = {
  temperature: { 'Δ°F': ['degF'], 'Δ°C': ['degC'] },
  'temperature-difference': { degF: ['Δ°F'], degC: ['Δ°C'] },
  pressure: {
    psi: ['psig', 'psia'],
    kPa: ['kPa gauge', 'kPa absolute'],
    MPa: ['MPa gauge', 'MPa absolute'],
    bar: ['bar gauge', 'bar absolute'],
    Pa: ['Pa absolute'],
  },
  'pressure-difference': {
    psig: ['psi'],
    psia: ['psi'],
    'kPa gauge': ['kPa'],
    'kPa absolute': ['kPa'],
    'kPa vacuum': ['kPa'],
    'MPa gauge': ['MPa'],
    'MPa absolute': ['MPa'],
    'bar gauge': ['bar'],
    'bar absolute': ['bar'],
    'Pa absolute': ['Pa'],
  },
};

/** Puts another unit in the place of the one that the literal ends in. */
function withUnit(literal: Literal, unit: string): string {
  const text = plainSpelling(literal.text);
  const spelling = literal.unit.spellings.find((one) => text.endsWith(one)) ?? '';
  return `${text.slice(0, text.length - spelling.length).trimEnd()} ${unit}`;
}

function wrongKind(literal: Literal, kind: Kind): LiteralProblem {
  const { unit } = literal;
  const others = insteadOf[kind]?.[unit.name] ?? [];
  const suggestions = others.map((other) => withUnit(literal, other));
  const text = literal.text.trim();
  if (kind === 'pressure' && unit.kinds[0] === 'pressure-difference') {
    return problem(
      'ambiguous-reference',
      `\`${text}\` does not say what it counts from: gauge or absolute.`,
      suggestions,
    );
  }
  const is = kindInWords(unit.kinds[0]!);
  const example = units.find((other) => other.kinds[0] === kind && other.example !== undefined)?.example;
  const hint = suggestions[0] ?? example;
  const as = hint === undefined ? '' : `, as \`${hint}\``;
  return problem('wrong-kind', `\`${text}\` is ${is}; ${kindInWords(kind)} belongs here${as}.`, suggestions);
}

/** A written value in SI; vacuum readings count down from the atmosphere. Pa, K, m ...; see `Quantity`. */
export function toSI(value: number, unit: Unit, kind: Kind, atmosphere: number): number {
  if (kind === 'pressure' && unit.reference === 'gauge') return atmosphere + value * unit.factor;
  if (kind === 'pressure' && unit.reference === 'vacuum') return atmosphere - value * unit.factor;
  if (kind === 'temperature') return value * unit.factor + (unit.offset ?? 0);
  return value * unit.factor;
}

/** The inverse of `toSI`. */
export function fromSI(value: number, unit: Unit, kind: Kind, atmosphere: number = standardAtmosphere): number {
  if (kind === 'pressure' && unit.reference === 'gauge') return (value - atmosphere) / unit.factor;
  if (kind === 'pressure' && unit.reference === 'vacuum') return (atmosphere - value) / unit.factor;
  if (kind === 'temperature') return (value - (unit.offset ?? 0)) / unit.factor;
  return value / unit.factor;
}

/**
 * Reads a literal as the kind that its place asks for. `atmosphere` (Pa) is that of the site: gauge and vacuum readings
 * count from it. What cannot be comes back as a problem: another kind, a gauge or absolute that is not said, a vacuum
 * deeper than a perfect one, a temperature below absolute zero, a negative length.
 */
export function toQuantity(literal: Literal, kind: Kind, atmosphere: number): Quantity | LiteralProblem {
  const { unit } = literal;
  if (!unit.kinds.includes(kind)) return wrongKind(literal, kind);
  const first = toSI(literal.low, unit, kind, atmosphere);
  const second = toSI(literal.high, unit, kind, atmosphere);
  const low = Math.min(first, second);
  const high = Math.max(first, second);
  const text = literal.text.trim();
  if (kind === 'pressure' && unit.reference === 'vacuum' && literal.low < 0) {
    return problem(
      'impossible',
      `\`${text}\` is less than no vacuum; a pressure above the atmosphere is written as \`${unit.system === 'si' ? 'kPa gauge' : 'psig'}\`.`,
    );
  }
  // A gauge reads a perfect vacuum to within its last digit, so that the rounding of the site's atmosphere is let pass.
  const slack = kind === 'pressure' && unit.reference !== 'absolute' ? atmosphere * 1e-3 : 0;
  if (!signed.has(kind) && low < -slack) {
    if (kind !== 'pressure')
      return problem('impossible', `\`${text}\` is less than nothing, which ${kindInWords(kind)} cannot be.`);
    const gauge = unitNamed(unit.system === 'si' ? 'kPa vacuum' : 'inHg')!;
    const perfect = `${(atmosphere / gauge.factor).toFixed(1)} ${gauge.name}`;
    return problem('impossible', `\`${text}\` is below a perfect vacuum, which here reads ${perfect}.`);
  }
  if (kind === 'temperature' && low < 0) return problem('impossible', `\`${text}\` is below absolute zero.`);
  return { kind, low: slack > 0 ? Math.max(0, low) : low, high: slack > 0 ? Math.max(0, high) : high };
}
