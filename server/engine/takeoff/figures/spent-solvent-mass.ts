import { oilDensity, solventLost } from '../../reference/flush-practice';
import { relation } from '../relation';
import { spentSolventInputs } from './spent-solvent-volume';

/** Weight to expect in the catch container, kg: what the scale shows against what went in. */
export const spentSolventMass = relation({
  name: 'spent-solvent-mass',
  title: 'Weight of spent solvent and oil',
  group: 5,
  inputs: {
    solvent: spentSolventInputs.solvent,
    density: { kind: 'density', title: 'density of the solvent', from: '`density` of the solvent', valid: [500, 2500] },
    oil: spentSolventInputs.oil,
    oilDensity: {
      kind: 'density',
      title: 'density of the oil',
      from: '`oil` of the system',
      default: oilDensity,
      valid: [700, 1200],
    },
    lost: spentSolventInputs.lost,
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
