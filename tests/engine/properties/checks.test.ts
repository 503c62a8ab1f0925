import { describe, expect, it } from 'vitest';
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
} from '../../../server/engine/properties/index';
import checks from '../../fixtures/properties/checks.json';

interface Check {
  fluid: string;
  quantity: string;
  input: { T?: number; p?: number };
  value: number;
  tolerance: number;
  relative: boolean;
}

const ofTemperature: Record<string, (refrigerant: Refrigerant, temperature: number) => number | null> = {
  pBubble: bubblePressure,
  pDew: dewPressure,
  rhoL: liquidDensity,
  rhoV: vapourDensity,
  hL: liquidEnthalpy,
  hV: vapourEnthalpy,
  muL: liquidViscosity,
  muV: vapourViscosity,
};
const ofPressure: typeof ofTemperature = { TBubble: bubbleTemperature, TDew: dewTemperature };
const ofGas = { rho: 'density', h: 'enthalpy', s: 'entropy', mu: 'viscosity' } as const;

function evaluate({ fluid, quantity, input }: Check): number | null {
  const { T = Number.NaN, p = Number.NaN } = input;
  if (fluid === 'Water') return waterSaturationPressure(T);
  if (fluid === 'Nitrogen' || fluid === 'Air') {
    return (fluid === 'Air' ? air : nitrogen)[ofGas[quantity as keyof typeof ofGas]](p, T);
  }
  const refrigerant = refrigerantNamed(fluid)!;
  if (quantity === 'rhoVapour') return superheatedVapour(refrigerant, p, T)?.density ?? null;
  if (quantity === 'hVapour') return superheatedVapour(refrigerant, p, T)?.enthalpy ?? null;
  if (ofPressure[quantity]) return ofPressure[quantity](refrigerant, p);
  return ofTemperature[quantity]!(refrigerant, T);
}

const values = checks.values as unknown as Check[];
const quantities = [...new Set(values.map((check) => check.quantity))];

// Source of every value: CoolProp 8.0.0, called directly at random states; tolerances as stated in the file.
describe('the tables against the library that they were fitted to', () => {
  it('have 692 values to be checked by', () => {
    expect(values).toHaveLength(692);
  });

  it.each(quantities)('%s', (quantity) => {
    for (const check of values.filter((one) => one.quantity === quantity)) {
      const found = evaluate(check);
      const name = `${check.fluid} ${quantity} at ${JSON.stringify(check.input)}`;
      expect(found, name).not.toBeNull();
      const difference = Math.abs(found! - check.value) / (check.relative ? Math.abs(check.value) : 1);
      expect(difference, name).toBeLessThanOrEqual(check.tolerance);
    }
  });
});
