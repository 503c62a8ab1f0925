import { relation } from '../relation';

/** Containers of solvent to bring, whole. */
export const solventContainers = relation({
  name: 'solvent-containers',
  title: 'Solvent containers to bring',
  group: 5,
  inputs: {
    volume: { kind: 'volume', as: 'fl-oz', title: 'solvent needed', from: '`tube` and `length` of the lines' },
    density: { kind: 'density', title: 'density of the solvent', from: '`density` of the solvent', valid: [500, 2500] },
    container: {
      kind: 'mass',
      title: 'content of a container',
      from: '`container` of the solvent',
      valid: [0.05, 2000],
    },
  },
  output: 'count',
  formula: 'containers = V × density / content of a container, rounded up',
  validity: 'full containers of one size',
  sources: ['arithmetic; density and content from the solvent’s sheet'],
  confidence: 'practice',
  assumptions: ['a container gives all that is in it'],
  examples: [
    {
      inputs: { volume: '1 gal', density: '1.25 kg/L', container: '12 lb' },
      expect: '1',
      tolerance: 0,
      source: 'by hand: 3.785 L × 1.25 = 4.73 kg of 5.44 kg',
    },
    {
      inputs: { volume: '6 L', density: '1.25 kg/L', container: '12 lb' },
      expect: '2',
      tolerance: 0,
      source: 'by hand: 7.5 kg of 5.44 kg each',
    },
  ],
  compute: ({ volume, density, container }, { say }) => {
    const value = Math.ceil((volume * density) / container - 1e-9);
    return {
      value,
      workings: () => [
        `${say('volume', volume, 'gal')} × ${say('density', density, 'lb/gal')} = ${say('mass', volume * density)}`,
        `${say('mass', volume * density)} / ${say('mass', container)} = ${((volume * density) / container).toFixed(2)}, so ${value}`,
      ],
    };
  },
});
