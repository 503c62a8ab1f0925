import { relation } from '../relation';

/** Nitrogen of several draws together, m3 at 70 °F and 1 atm: of a step over its lines, of a job over its steps. */
export const nitrogenInAll = relation({
  name: 'nitrogen-in-all',
  title: 'Nitrogen in all',
  group: 6,
  inputs: {
    draws: { kind: 'volume', as: 'scf', title: 'nitrogen of a draw', from: 'the steps that draw it', several: true },
  },
  output: 'volume',
  outputUnit: 'scf',
  formula: 'V = sum of the draws, each as often as it is made',
  validity: 'draws of one cylinder after the other',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['nothing is lost at the hoses'],
  examples: [
    {
      inputs: { draws: ['6.65 scf', '1.9 scf'] },
      expect: '8.55 scf',
      tolerance: 1e-9,
      source: 'by hand: handbook WE-42 and 6.3',
    },
  ],
  compute: ({ draws }, { say }) => {
    const value = draws.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [`${draws.map((one) => say('volume', one, 'scf')).join(' + ')} = ${say('volume', value, 'scf')}`],
    };
  },
});
