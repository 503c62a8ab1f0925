import { relation } from '../relation';

/** Solvent of the whole job, least to most rounds, m3. */
export const solventInJob = relation({
  name: 'solvent-in-job',
  title: 'Solvent in all',
  group: 5,
  inputs: {
    passes: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'solvent of a step over its rounds',
      from: '`tube` and `length` of the lines',
      several: true,
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = sum of the steps, each as often as it is worked',
  validity: 'one line at a time',
  sources: ['arithmetic'],
  confidence: 'practice',
  assumptions: ['one line at a time, so that every line takes its own pass'],
  examples: [{ inputs: { passes: ['16 fl-oz', '37 fl-oz'] }, expect: '53 fl-oz', tolerance: 1e-9, source: 'by hand' }],
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
