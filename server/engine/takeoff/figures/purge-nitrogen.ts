import { relation } from '../relation';

/** Nitrogen that a purge takes, m3 at 70 °F and 1 atm. */
export const purgeNitrogen = relation({
  name: 'purge-nitrogen',
  title: 'Nitrogen of a purge',
  group: 6,
  inputs: {
    flow: { kind: 'volume-flow', as: 'scfm', title: 'flow', from: 'the pressure in the `purge` step' },
    time: { kind: 'time', title: 'time', from: '`for` in the `purge` step', valid: [0, 86400] },
  },
  output: 'volume',
  outputUnit: 'scf',
  formula: 'V = flow × time',
  validity: 'steady flow',
  sources: ['arithmetic on the flow of the purge'],
  confidence: 'computed',
  assumptions: ['the pressure is held for the whole time'],
  examples: [
    {
      inputs: { flow: '49 scfm', time: '25 s' },
      expect: '20.4 scf',
      tolerance: 2e-3,
      source: 'handbook 6.4: a 20-scf cylinder lasts about 25 s at 100 psig through an open 1/4 line',
    },
    {
      inputs: { flow: '5 cfh', time: '23 min' },
      expect: '1.92 scf',
      tolerance: 2e-3,
      source: 'handbook 6.3: 1.9 scf take 23 min at 5 cfh',
    },
  ],
  compute: ({ flow, time }, { say }) => ({
    value: flow * time,
    notes: ['Counted at 70 °F and 1 atm.'],
    workings: () => [
      `nitrogen = ${say('volume-flow', flow, 'scfm')} × ${say('time', time)} = ${say('volume', flow * time, 'scf')}`,
    ],
  }),
});
