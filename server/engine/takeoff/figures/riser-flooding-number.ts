import { oilDensity } from '../../reference/flush-practice';
import { floodingNumberLeast } from '../../reference/velocity-limits';
import { relation } from '../relation';

const gravity = 9.80665;

/** Flooding number of a riser: below 0.85 the oil film falls back. */
export const riserFloodingNumber = relation({
  name: 'riser-flooding-number',
  title: 'Oil return of a riser',
  group: 13,
  inputs: {
    velocity: {
      kind: 'velocity',
      as: 'ft/min',
      title: 'velocity at the least load',
      from: '`capacity …, least …` of the system',
    },
    density: {
      kind: 'density',
      title: 'density of the vapour',
      from: '`refrigerant` and temperatures of the system',
      valid: [0.01, 600],
    },
    bore: { kind: 'length', as: 'in', title: 'bore', from: '`tube` of the riser', valid: [1e-3, 0.3] },
    oil: {
      kind: 'density',
      title: 'density of the oil',
      from: '`oil` of the system',
      default: oilDensity,
      valid: [650, 1200],
    },
  },
  output: 'count',
  outputDigits: 2,
  formula: 'j* = v √ρ gas / √(g D (ρ oil - ρ gas)), at least 0.85',
  validity: 'vertical risers, oil that mixes with the refrigerant only in part',
  sources: [floodingNumberLeast.source],
  confidence: 'memory',
  assumptions: ['least load', 'steady upward flow'],
  examples: [
    {
      inputs: { velocity: '440 ft/min', density: '1.477 lb/ft3', bore: '0.785 in', oil: '900 kg/m3' },
      expect: '0.85',
      tolerance: 0.04,
      source: 'handbook 10.1: 7/8 and R-22 at 40 °F about 430 to 450 fpm',
    },
    {
      inputs: { velocity: '510 ft/min', density: '1.477 lb/ft3', bore: '1.025 in', oil: '900 kg/m3' },
      expect: '0.85',
      tolerance: 0.04,
      source: 'handbook 10.1: 1-1/8 about 510 fpm',
    },
  ],
  compute: ({ velocity, density, bore, oil }, { say, system }) => {
    const value = (velocity * Math.sqrt(density)) / Math.sqrt(gravity * bore * (oil - density));
    const least = floodingNumberLeast.quantity.low;
    const needed = (velocity * least) / Math.max(value, 1e-9);
    return {
      value,
      notes: value < least ? [`The oil falls back below ${say('velocity', needed, 'ft/min')}.`] : [],
      workings: () => [
        `${say('velocity', velocity, 'ft/s')} × √${say('density', density)} / √(${system === 'si' ? '9.807 m/s²' : '32.17 ft/s²'} × ${say('length', bore, 'ft')} × (${say('density', oil)} - ${say('density', density)})) = ${value.toFixed(2)}`,
      ],
    };
  },
});
