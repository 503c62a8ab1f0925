import refrigerants from './data/refrigerants.json';
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

interface RefrigerantFile {
  readonly R: number;
  readonly leftOut: Readonly<Record<string, string>>;
  readonly fluids: Readonly<Record<string, FluidTable>>;
}

// A test validates the file against its schema; here it is trusted, so that starting costs nothing more than its reading.
const file = refrigerants as unknown as RefrigerantFile;

export const fluidTables: Readonly<Record<string, FluidTable>> = file.fluids;
export const leftOut: Readonly<Record<string, string>> = file.leftOut;
/** Molar gas constant, J/(mol K): the one that the tables were made with. */
export const gasConstant = file.R;
