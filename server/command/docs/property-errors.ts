import {
  air,
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  liquidDensity,
  liquidEnthalpy,
  liquidViscosity,
  nitrogen,
  type Refrigerant,
  refrigerantNamed,
  superheatedVapour,
  vapourDensity,
  vapourEnthalpy,
  vapourViscosity,
  waterSaturationPressure,
} from '../../engine/properties';

/** A value of the reference library at one state: `T` in K, `p` in Pa, the value in SI. */
export interface PropertyCheck {
  readonly fluid: string;
  readonly quantity: string;
  readonly input: { readonly T?: number; readonly p?: number };
  readonly value: number;
  readonly unit: string;
  readonly tolerance: number;
  /** Whether tolerance and error are shares of the value, or in its unit. */
  readonly relative: boolean;
}

/** The worst that the tables do in one property, over all values that it is checked by. */
export interface PropertyError {
  readonly property: string;
  readonly values: number;
  readonly worst: number;
  readonly allowed: number;
  /** Null where it is a share. */
  readonly unit: string | null;
  readonly fluid: string;
  readonly input: PropertyCheck['input'];
}

const saturated: Readonly<Record<string, (refrigerant: Refrigerant, temperature: number) => number | null>> = {
  pBubble: bubblePressure,
  pDew: dewPressure,
  rhoL: liquidDensity,
  rhoV: vapourDensity,
  hL: liquidEnthalpy,
  hV: vapourEnthalpy,
  muL: liquidViscosity,
  muV: vapourViscosity,
};
const boiling: typeof saturated = { TBubble: bubbleTemperature, TDew: dewTemperature };
const gases = { rho: 'density', h: 'enthalpy', s: 'entropy', mu: 'viscosity' } as const;

const titles: Readonly<Record<string, string>> = {
  pBubble: 'bubble pressure',
  pDew: 'dew pressure',
  rhoL: 'density of the liquid',
  rhoV: 'density of saturated vapour',
  rhoVapour: 'density of superheated vapour',
  hL: 'enthalpy of the liquid',
  hV: 'enthalpy of saturated vapour',
  hVapour: 'enthalpy of superheated vapour',
  muL: 'viscosity of the liquid',
  muV: 'viscosity of the vapour',
  TBubble: 'bubble temperature',
  TDew: 'dew temperature',
  rho: 'density of nitrogen and air',
  h: 'enthalpy of nitrogen and air',
  s: 'entropy of nitrogen and air',
  mu: 'viscosity of nitrogen and air',
};

/** What the engine gives at the state of a check; null where it refuses. */
export function engineValue({ fluid, quantity, input }: PropertyCheck): number | null {
  const { T = Number.NaN, p = Number.NaN } = input;
  if (fluid === 'Water') return waterSaturationPressure(T);
  if (fluid === 'Nitrogen' || fluid === 'Air') {
    const gas = gases[quantity as keyof typeof gases];
    return gas === undefined ? null : (fluid === 'Air' ? air : nitrogen)[gas](p, T);
  }
  const refrigerant = refrigerantNamed(fluid);
  if (!refrigerant) return null;
  if (quantity === 'rhoVapour') return superheatedVapour(refrigerant, p, T)?.density ?? null;
  if (quantity === 'hVapour') return superheatedVapour(refrigerant, p, T)?.enthalpy ?? null;
  return boiling[quantity]?.(refrigerant, p) ?? saturated[quantity]?.(refrigerant, T) ?? null;
}

/** The worst error of each property, in the order in which the checks name them. A refused value is an error without end. */
export function propertyErrors(checks: readonly PropertyCheck[]): readonly PropertyError[] {
  const worst = new Map<string, PropertyError>();
  for (const check of checks) {
    const property =
      check.fluid === 'Water' ? 'vapour pressure of water and ice' : (titles[check.quantity] ?? check.quantity);
    const found = engineValue(check);
    const off =
      found === null
        ? Number.POSITIVE_INFINITY
        : Math.abs(found - check.value) / (check.relative ? Math.abs(check.value) : 1);
    const before = worst.get(property);
    const worse = before === undefined || off > before.worst;
    worst.set(property, {
      property,
      values: (before?.values ?? 0) + 1,
      worst: worse ? off : before.worst,
      allowed: Math.max(before?.allowed ?? 0, check.tolerance),
      unit: check.relative ? null : check.unit,
      fluid: worse ? check.fluid : before.fluid,
      input: worse ? check.input : before.input,
    });
  }
  return [...worst.values()];
}
