import { relation } from '../relation';

/** Solvent of one step over all its lines, one round, m3. */
export const solventOfStep = relation({
  name: 'solvent-of-step',
  title: 'Solvent of a step, one round',
  group: 5,
  inputs: {
    passes: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'solvent of a pass',
      from: '`tube` and `length` of the lines',
      several: true,
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = sum over the lines',
  validity: 'one line at a time',
  sources: ['arithmetic'],
  confidence: 'practice',
  assumptions: ['one line at a time'],
  examples: [
    {
      inputs: { passes: ['0.25 L', '0.714 L'] },
      expect: '0.964 L',
      tolerance: 1e-9,
      source: 'by hand on handbook WE-30',
    },
  ],
  compute: ({ passes }, { say }) => {
    const value = passes.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [
        `${passes.map((one) => say('volume', one, 'fl-oz')).join(' + ')} = ${say('volume', value, 'fl-oz')}`,
      ],
    };
  },
});
