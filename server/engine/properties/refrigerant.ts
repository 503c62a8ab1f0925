import { leftOut } from './data/refrigerants';
import type { Domain } from './series';
import { type FluidTable, readTable, tableNames } from './tables';

export interface Component {
  /** ASHRAE number: `R-32`. */
  readonly name: string;
  /** Share by mass, and by amount, 0 to 1. */
  readonly mass: number;
  readonly mole: number;
}

/** A refrigerant with its tables. K, Pa, kg/m3, kg/mol. */
export interface Refrigerant {
  readonly name: string;
  readonly kind: 'pure' | 'blend';
  readonly composition: readonly Component[];
  readonly molarMass: number;
  /** Of a blend: that of the mixture's model; `approximate` where it was found at a composition a hair off. */
  readonly critical: {
    readonly temperature: number;
    readonly pressure: number;
    readonly density: number;
    readonly approximate: boolean;
  };
  /** At 1 atm; null where no liquid exists at that pressure within the table, as of R-744. */
  readonly boiling: { readonly bubble: number; readonly dew: number; readonly glide: number } | null;
  readonly model: FluidTable['model'];
  /** Pairs of components whose interaction is estimated, `R-22/R-125`. */
  readonly estimatedPairs: readonly string[];
  readonly viscosityTrust: FluidTable['viscosity'];
  /** Temperatures that the saturation tables span, K. */
  readonly temperatureRange: Domain;
  /** Temperatures of the dew line, and superheats above it, that the table of superheated vapour spans, K. */
  readonly vapourRange: { readonly dewTemperature: Domain; readonly superheat: Domain };
  readonly table: FluidTable;
}

/** All refrigerants with tables, in the order of the file. */
export const refrigerantNames: readonly string[] = tableNames;

const made = new Map<string, Refrigerant>();

/** The refrigerant of an ASHRAE number written as in a plan, `R-454B`; undefined where there is no table. */
export function refrigerantNamed(name: string): Refrigerant | undefined {
  const known = made.get(name);
  if (known !== undefined) return known;
  const table = readTable(name);
  if (table === undefined) return undefined;
  const refrigerant: Refrigerant = {
    name,
    kind: table.kind,
    composition: table.composition.map(({ r, w, x }) => ({ name: r, mass: w, mole: x })),
    molarMass: table.M,
    critical: {
      temperature: table.critical.T,
      pressure: table.critical.p,
      density: table.critical.rho,
      approximate: table.critical.approximate === true,
    },
    boiling: table.boiling,
    model: table.model,
    estimatedPairs: table.estimatedPairs,
    viscosityTrust: table.viscosity,
    temperatureRange: table.sat.T,
    vapourRange: { dewTemperature: table.vap.Ts, superheat: table.vap.dT },
    table,
  };
  made.set(name, refrigerant);
  return refrigerant;
}

/** Why a known refrigerant has no table, in words; undefined where it has one or is not known. */
export const whyLeftOut = (name: string): string | undefined =>
  Object.hasOwn(leftOut, name) ? leftOut[name] : undefined;
