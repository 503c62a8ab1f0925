import { relation } from '../relation';

/** Used oil to take away, m3, in a can of its own. */
export const usedOil = relation({
  name: 'used-oil',
  title: 'Used oil to take away',
  group: 16,
  inputs: {
    drains: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'oil of a drain over its rounds',
      from: '`to` of the `change-oil` step',
      several: true,
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = sum of the drains; as much comes out as goes in',
  validity: 'oil that is drained; what a removed part still holds goes with the part',
  sources: ['40 CFR 279.10(b)(1)(ii)(B): kept apart from spent solvent, or the used-oil exemption is lost'],
  confidence: 'published',
  assumptions: ['the level is the same before and after each round'],
  examples: [
    { inputs: { drains: ['140 fl-oz', '280 fl-oz'] }, expect: '420 fl-oz', tolerance: 1e-9, source: 'by hand' },
  ],
  compute: ({ drains }, { say }) => {
    const value = drains.reduce((sum, one) => sum + one, 0);
    return {
      value,
      notes: ['Never into the can of spent solvent: mixed, both are hazardous waste.'],
      workings: () => [
        `${drains.map((one) => say('volume', one, 'fl-oz')).join(' + ')} = ${say('volume', value, 'fl-oz')}`,
      ],
    };
  },
});
