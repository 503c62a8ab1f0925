import { relation } from '../relation';

/** Solvent of all passes through one line, m3. */
export const solventInAll = relation({
  name: 'solvent-in-all',
  title: 'Solvent in all passes',
  group: 5,
  inputs: {
    perPass: { kind: 'volume', as: 'fl-oz', title: 'solvent of a pass', from: '`tube` and `length` of the line' },
    passes: {
      kind: 'count',
      title: 'number of passes',
      from: '`at least` and `at most` of the `repeat`',
      valid: [1, 100],
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = V per pass × passes',
  validity: 'one line, passes alike',
  sources: ['arithmetic on the solvent of a pass'],
  confidence: 'practice',
  assumptions: ['each pass takes fresh solvent'],
  examples: [
    {
      inputs: { perPass: '0.25 L', passes: '2' },
      expect: '0.50 L',
      tolerance: 1e-6,
      source: 'handbook section 12, WE-30',
    },
    {
      inputs: { perPass: '0.71385 L', passes: '2' },
      expect: '1.43 L',
      tolerance: 2e-3,
      source: 'handbook section 12, WE-30',
    },
  ],
  compute: ({ perPass, passes }, { say }) => ({
    value: perPass * passes,
    workings: () => [
      `solvent = ${passes} × ${say('volume', perPass, 'fl-oz')} = ${say('volume', perPass * passes, 'fl-oz')}`,
    ],
  }),
});
