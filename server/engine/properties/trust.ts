import type { Refrigerant } from './refrigerant';

/** How far a refrigerant's figures may be off, as shares of the value (0.02 is 2 %). */
export interface Trust {
  readonly pressure: number;
  readonly density: number;
  readonly viscosity: { readonly liquid: number; readonly vapour: number };
  /** What the figures rest on, in a sentence for the reader. */
  readonly note: string;
}

type Group = readonly [pressure: number, density: number, note: string];

// Shares are a judgement from memory of what such equations usually reach, taken with the tables: no measured data were at
// hand. Of each pair the larger is kept. The fit of the tables to the equations is far better, a few parts in a million.
const reference: ReadonlySet<string> = new Set(
  'R-12 R-22 R-32 R-125 R-134a R-143a R-152a R-123 R-290 R-600a R-717 R-744 R-1234yf R-1234ze(E)'.split(' '),
);
const common: ReadonlySet<string> = new Set('R-32 R-125 R-134a R-143a'.split(' '));
const olefins: ReadonlySet<string> = new Set('R-1234yf R-1234ze(E) R-13I1'.split(' '));
const hydrocarbons: ReadonlySet<string> = new Set('R-170 R-290 R-600 R-600a R-601 R-601a R-1270'.split(' '));
const chlorinated: ReadonlySet<string> = new Set('R-22 R-115 R-12 R-124 R-142b'.split(' '));

/**
 * Blends that stand further off than their group. R-408A: no value of its estimated pair brings it nearer. R-454C: its
 * boiling points come out 0.6 K above those that ASHRAE 34 prints (from memory), which is 2.5 % of pressure.
 */
const furtherOff: Readonly<Record<string, number>> = { 'R-408A': 0.05, 'R-454C': 0.025 };

/** A few per cent of hydrocarbon, by mass: more than this is another kind of blend. */
const fewPerCent = 0.06;

function groupsOf(refrigerant: Refrigerant): Group[] {
  const { name, kind, composition, estimatedPairs } = refrigerant;
  if (kind === 'pure') {
    if (reference.has(name)) return [[0.002, 0.001, 'Reference equation of state.']];
    return [[0.01, 0.01, 'Short or older equation of state.']];
  }
  const found: Group[] = [];
  const share = (names: ReadonlySet<string>): number =>
    composition.reduce((total, part) => total + (names.has(part.name) ? part.mass : 0), 0);
  if (estimatedPairs.length > 0) {
    found.push([0.04, 0.01, `Estimated: the pairs ${estimatedPairs.join(', ')} have no measured parameters.`]);
  }
  const light = share(hydrocarbons);
  if (light > 0 && light <= fewPerCent) found.push([0.05, 0.005, 'A few per cent of hydrocarbon weigh on the model.']);
  if (share(chlorinated) > 0) found.push([0.04, 0.01, 'Mixture model with older components.']);
  if (share(olefins) > 0) found.push([0.01, 0.003, 'Mixture model with recently fitted pairs.']);
  const rest = composition.filter(
    (part) =>
      ![common, olefins, chlorinated].some((names) => names.has(part.name)) &&
      !(hydrocarbons.has(part.name) && light <= fewPerCent),
  );
  if (rest.length > 0) {
    const names = rest.map((part) => part.name).join(', ');
    found.push([0.05, 0.01, `Mixture model; blends with ${names} were not judged, so the widest share is taken.`]);
  }
  if (found.length === 0) found.push([0.005, 0.002, 'Mixture model of R-32, R-125, R-134a and R-143a.']);
  return found;
}

/** Worst differences seen where an estimate stood beside a known viscosity; of equations a fair allowance. */
const viscosityShares: Readonly<Record<Refrigerant['viscosityTrust'], Trust['viscosity']>> = {
  reference: { liquid: 0.1, vapour: 0.1 },
  'pseudo-pure': { liquid: 0.1, vapour: 0.1 },
  estimated: { liquid: 0.16, vapour: 0.08 },
  coarse: { liquid: 0.47, vapour: 0.14 },
};

/** From here on a share is more than charts differ by among themselves, so that whoever reads a figure must know of it. */
const worthTelling = 0.01;

const percent = (share: number): string => `${Number((share * 100).toPrecision(2))} %`;

/**
 * What goes with every figure that is made from a refrigerant's tables, where they are less sure than charts are among
 * themselves; null where they are not.
 */
export function trustWord(refrigerant: Refrigerant): string | null {
  const { pressure, density } = trustIn(refrigerant);
  if (pressure < worthTelling) return null;
  const model = groupsOf(refrigerant)
    .map(([, , note]) => note)
    .join(' ');
  return `${refrigerant.name}: pressures by the tables are good to about ${percent(pressure)}, densities to ${percent(density)}. ${model}`;
}

const known = new WeakMap<Refrigerant, Trust>();

/** How far the figures of a refrigerant are to be trusted: to go with every figure that is shown. */
export function trustIn(refrigerant: Refrigerant): Trust {
  const before = known.get(refrigerant);
  if (before !== undefined) return before;
  const groups = groupsOf(refrigerant);
  const coarse = refrigerant.viscosityTrust === 'coarse' ? ' Viscosity is coarse: for pressure drop only.' : '';
  const trust: Trust = {
    pressure: Math.max(furtherOff[refrigerant.name] ?? 0, ...groups.map(([pressure]) => pressure)),
    density: Math.max(...groups.map(([, density]) => density)),
    viscosity: viscosityShares[refrigerant.viscosityTrust],
    note: groups.map(([, , note]) => note).join(' ') + coarse,
  };
  known.set(refrigerant, trust);
  return trust;
}
