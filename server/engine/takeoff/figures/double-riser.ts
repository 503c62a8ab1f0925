import { oilDensity } from '../../reference/flush-practice';
import { floodingNumberLeast } from '../../reference/velocity-limits';
import { relation } from '../relation';
import type { Context } from '../spec';

const gravity = 9.80665;

const shared = {
  density: {
    kind: 'density',
    title: 'density of the vapour',
    from: '`refrigerant` and temperatures of the system',
    valid: [0.01, 600],
  },
  bores: { kind: 'length', title: 'bore of a pipe', from: '`tube` of the risers', several: true, valid: [1e-3, 0.3] },
  oil: {
    kind: 'density',
    title: 'density of the oil',
    from: '`oil` of the system',
    default: oilDensity,
    valid: [650, 1200],
  },
} as const;

/**
 * Flow in kg/s at which every pipe of a riser has the flooding number 1. Pipes side by side share one pressure drop; with
 * one friction factor the velocity in each goes with the root of its bore, and so does the velocity at which oil falls
 * back: the number is the same in all of them, and flows add by area times root of bore.
 */
const flowAtOne = (bores: readonly number[], density: number, oil: number): number =>
  bores.reduce(
    (sum, bore) => sum + (Math.PI / 4) * bore ** 2 * Math.sqrt(gravity * bore * (oil - density) * density),
    0,
  );

/** The flow at which the number is 1 in each pipe, and in all of them. */
const pipes = (bores: readonly number[], density: number, oil: number, { say, system }: Context): readonly string[] => {
  const each = bores.map((bore) => {
    const velocity = Math.sqrt((gravity * bore * (oil - density)) / density);
    const flow = flowAtOne([bore], density, oil);
    const g = system === 'si' ? '9.807 m/s²' : '32.17 ft/s²';
    return `${say('length', bore, 'in')}: j* = 1 at √(${g} × ${say('length', bore, 'ft')} × (${say('density', oil)} - ${say('density', density)}) / ${say('density', density)}) = ${say('velocity', velocity, 'ft/s')}; × ${say('area', (Math.PI / 4) * bore ** 2, 'in2')} × ${say('density', density)} = ${say('mass-flow', flow)}`;
  });
  return [...each, ...(bores.length > 1 ? [`together ${say('mass-flow', flowAtOne(bores, density, oil))}`] : [])];
};

const assumptions = ['pipes of equal length', 'one friction factor in all pipes', 'steady upward flow'];

/** Flooding number in the pipes of a riser that carry a flow together: both at full load, the small one alone at least load. */
export const doubleRiserNumber = relation({
  name: 'double-riser-number',
  title: 'Oil return of a double riser',
  group: 13,
  inputs: {
    flow: {
      kind: 'mass-flow',
      title: 'refrigerant flow',
      from: '`capacity …, least …` of the system',
      valid: [1e-7, 1e3],
    },
    ...shared,
  },
  output: 'count',
  outputDigits: 2,
  formula: 'j* = flow / Σ (π/4 D² √(g D (ρ oil - ρ gas) ρ gas)), at least 0.85',
  validity: 'both pipes at full load; at least load the trap is full of oil and the small pipe works alone',
  sources: [floodingNumberLeast.source, 'equal pressure drop of pipes side by side'],
  confidence: 'memory',
  assumptions,
  examples: [
    {
      inputs: { flow: '2.184 lb/min', density: '1.477 lb/ft3', bores: ['0.785 in'], oil: '900 kg/m3' },
      expect: '0.85',
      tolerance: 0.04,
      source:
        'handbook 10.1: one 7/8 pipe with R-22 at 40 °F carries oil from about 440 fpm (× its bore area = 2.18 lb/min)',
    },
    {
      inputs: { flow: '4.368 lb/min', density: '1.477 lb/ft3', bores: ['0.785 in', '0.785 in'], oil: '900 kg/m3' },
      expect: '0.85',
      tolerance: 0.04,
      source: 'closed form: two alike pipes carry twice the flow of one (handbook 10.1)',
    },
  ],
  compute: ({ flow, density, bores, oil }, context) => {
    const { say } = context;
    const atOne = flowAtOne(bores, density, oil);
    const value = flow / atOne;
    const least = floodingNumberLeast.quantity.low;
    return {
      value,
      notes: value < least ? [`The oil falls back below ${say('mass-flow', least * atOne)}.`] : [],
      workings: () => [
        ...pipes(bores, density, oil, context),
        `${say('mass-flow', flow)} / ${say('mass-flow', atOne)} = ${value.toFixed(2)}`,
      ],
    };
  },
});

/** The flow below which the large pipe must be sealed off by its trap, and which the small one must then carry, kg/s. */
export const doubleRiserLeastFlow = relation({
  name: 'double-riser-least-flow',
  title: 'Least flow that a riser carries oil with',
  group: 13,
  inputs: shared,
  output: 'mass-flow',
  formula: 'flow = 0.85 × Σ (π/4 D² √(g D (ρ oil - ρ gas) ρ gas))',
  validity: 'for both pipes: where the large one is sealed off; for the small one alone: the least load of the riser',
  sources: [floodingNumberLeast.source, 'equal pressure drop of pipes side by side'],
  confidence: 'memory',
  assumptions,
  examples: [
    {
      inputs: { density: '1.477 lb/ft3', bores: ['1.025 in'], oil: '900 kg/m3' },
      expect: '4.316 lb/min',
      tolerance: 0.04,
      source: 'handbook 10.1: 1-1/8 about 510 fpm, × 0.825 in2 (1.1) × 1.477 lb/ft3',
    },
  ],
  compute: ({ density, bores, oil }, context) => {
    const { say } = context;
    const value = floodingNumberLeast.quantity.low * flowAtOne(bores, density, oil);
    return {
      value,
      workings: () => [
        ...pipes(bores, density, oil, context),
        `${floodingNumberLeast.quantity.low} × ${say('mass-flow', flowAtOne(bores, density, oil))} = ${say('mass-flow', value)}`,
      ],
    };
  },
});
