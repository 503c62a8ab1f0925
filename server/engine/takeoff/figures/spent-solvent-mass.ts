import { oilDensity, solventLost } from '../../reference/flush-practice';
import { relation } from '../relation';

/** Weight to expect in the catch container, kg: what the scale shows against what went in. */
export const spentSolventMass = relation({
  name: 'spent-solvent-mass',
  title: 'Weight of spent solvent and oil',
  group: 5,
  inputs: {
    solvent: { kind: 'volume', as: 'fl-oz', title: 'solvent put in', from: '`tube` and `length` of the lines' },
    density: { kind: 'density', title: 'density of the solvent', from: '`density` of the solvent', valid: [500, 2500] },
    oil: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'old oil washed out',
      from: '`tube` and `length` of the lines',
      optional: true,
    },
    oilDensity: {
      kind: 'density',
      title: 'density of the oil',
      from: '`oil` of the system',
      default: oilDensity,
      valid: [700, 1200],
    },
    lost: {
      kind: 'share',
      title: 'share of the solvent that evaporates',
      from: '`per` the solvent’s sheet',
      default: solventLost,
      valid: [0, 1],
    },
  },
  output: 'mass',
  formula: 'm = V solvent × density × (1 - share lost) + V oil × density of oil',
  validity: 'all outlets led into containers',
  sources: [solventLost.source, oilDensity.source],
  confidence: 'practice',
  assumptions: ['what evaporates is solvent, not oil'],
  examples: [
    {
      inputs: { solvent: '2 L', density: '1.25 kg/L', lost: '0 %', oilDensity: '900 kg/m3' },
      expect: '2.5 kg',
      tolerance: 1e-6,
      source: 'by hand',
    },
  ],
  compute: ({ solvent, density, oil = 0, oilDensity: oilWeight, lost }, { say }) => {
    const value = solvent * density * (1 - lost) + oil * oilWeight;
    return {
      value,
      workings: () => [
        `weight = ${say('volume', solvent, 'gal')} × ${say('density', density, 'lb/gal')} × (1 - ${say('share', lost)}) + ${say('volume', oil, 'gal')} × ${say('density', oilWeight, 'lb/gal')} = ${say('mass', value)}`,
      ],
    };
  },
});
