import { leastDistance, scaledDistance, tntEnergy } from '../../reference/pressure-test';
import { relation } from '../relation';

/** Distance to keep from a section under test, m. */
export const keepAwayDistance = relation({
  name: 'keep-away-distance',
  title: 'Distance to keep during the test',
  group: 8,
  inputs: {
    energy: {
      kind: 'energy',
      title: 'stored energy',
      from: '`test-pressure` and the volumes of the parts',
      valid: [0, 1e10],
    },
  },
  output: 'length',
  outputUnit: 'ft',
  formula: 'd = 20 m × (E / 4.184 MJ/kg)^(1/3), at least 3 m',
  validity: 'blast in the open; closed rooms throw it back',
  sources: [scaledDistance.source, leastDistance.source],
  confidence: 'memory',
  assumptions: ['fragments are met by standing aside of caps and hose ends'],
  examples: [
    {
      inputs: { energy: '31 kJ' },
      expect: '3.9 m',
      tolerance: 0.01,
      source: 'by hand: 7.4 g of TNT (handbook 6.4), 20 × 0.0074^(1/3)',
    },
    { inputs: { energy: '1 kJ' }, expect: '3 m', tolerance: 1e-9, source: 'limit: never nearer than the least' },
  ],
  compute: ({ energy }, { say }) => {
    const kilograms = energy / tntEnergy;
    const scaled = scaledDistance.quantity.low * kilograms ** (1 / 3);
    const value = Math.max(leastDistance.quantity.low, scaled);
    return {
      value,
      workings: () => [
        `${say('energy', energy, 'kJ')} / 4.184 MJ/kg = ${say('mass', kilograms, 'g')} of TNT`,
        `20 m × (${kilograms.toPrecision(4)} kg)^(1/3) = ${scaled.toPrecision(4)} m, which is ${say('length', scaled)}; at least ${say('length', leastDistance.quantity.low)}: ${say('length', value)}`,
      ],
    };
  },
});
