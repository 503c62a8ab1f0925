import { refrigerantLines } from './data/refrigerants';
import type { Domain, Series, Surface } from './series';

/** One refrigerant as the data file holds it; see data/README.md. K, Pa, kg/m3, J/kg, Pa s, kg/mol. */
export interface FluidTable {
  readonly kind: 'pure' | 'blend';
  readonly model: 'equation of state' | 'mixture' | 'mixture, estimated pairs';
  readonly composition: readonly { readonly r: string; readonly w: number; readonly x: number }[];
  readonly estimatedPairs: readonly string[];
  readonly M: number;
  readonly critical: { readonly T: number; readonly p: number; readonly rho: number; readonly approximate?: boolean };
  readonly boiling: { readonly bubble: number; readonly dew: number; readonly glide: number } | null;
  readonly viscosity: 'reference' | 'pseudo-pure' | 'estimated' | 'coarse';
  readonly sat: {
    readonly T: Domain;
    readonly lnpB: Series;
    /** Blends only: the bubble and the dew line of a pure refrigerant are one. */
    readonly lnpD?: Series;
    readonly rhoL: Series;
    readonly lnrhoV: Series;
    readonly hL: Series;
    readonly hV: Series;
    readonly lnmuL: Series;
    readonly lnmuV: Series;
  };
  readonly vap: { readonly Ts: Domain; readonly dT: Domain; readonly Z: Surface; readonly h: Surface };
}

// A test validates every line against its schema; here it is trusted. A table is read when its refrigerant is first named.
const lines = new Map<string, string>();
for (const line of refrigerantLines.trim().split('\n')) {
  const end = line.indexOf('":');
  lines.set(line.slice(1, end), line.slice(end + 2));
}

export const tableNames: readonly string[] = [...lines.keys()];

/** The table of a refrigerant, read anew at each call; undefined where there is none. */
export function readTable(name: string): FluidTable | undefined {
  const line = lines.get(name);
  return line === undefined ? undefined : (JSON.parse(line) as FluidTable);
}
