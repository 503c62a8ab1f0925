import { standardAtmosphere } from '../../reference/table-units';
import { relation } from '../relation';

/** Air let in during a decay test, m3/s at 1 atm. */
export const decayLeakRate = relation({
  name: 'decay-leak-rate',
  title: 'Leak rate from a decay test',
  group: 9,
  inputs: {
    volume: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume of the section',
      from: '`tube` and `length` of its lines, `volume` of its parts',
    },
    rise: {
      kind: 'pressure-difference',
      as: 'micron',
      title: 'rise',
      from: '`rise at most` in the `decay-test` step',
      valid: [0, 1e5],
    },
    time: { kind: 'time', title: 'time', from: '`for` in the `decay-test` step', valid: [1, 1e7] },
  },
  output: 'volume-flow',
  outputUnit: 'mL/min',
  formula: 'Q = V × Δp / t, as air at 1 atm',
  validity: 'a rise that goes on in a straight line; one that levels off is water or oil',
  sources: ['definition of the leak rate'],
  confidence: 'computed',
  assumptions: ['constant temperature'],
  examples: [
    {
      inputs: { volume: '30 L', rise: '500 micron', time: '10 min' },
      expect: '1.974 mL/min',
      tolerance: 2e-3,
      source: 'handbook 8.1: 3.3e-3 Pa m³/s; by hand 30 L × 66.66 Pa / 101325 Pa / 10 min',
    },
  ],
  compute: ({ volume, rise, time }, { say }) => {
    const rate = (volume * rise) / time;
    return {
      value: rate / standardAtmosphere,
      workings: () => [
        `${say('volume', volume, 'L')} × ${say('pressure-difference', rise, 'micron')} / ${say('pressure-difference', standardAtmosphere, 'micron')} / ${say('time', time)} = ${say('volume-flow', rate / standardAtmosphere, 'mL/min')} of air at 1 atm`,
      ],
    };
  },
});
