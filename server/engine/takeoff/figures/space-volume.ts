import { relation } from '../relation';

/** Inside volume of what hangs together at a step, m3. */
export const spaceVolume = relation({
  name: 'space-volume',
  title: 'Inside volume of what hangs together',
  group: 1,
  inputs: {
    volumes: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume of a part',
      from: '`tube` and `length`, or `volume`, of a part',
      several: true,
    },
  },
  output: 'volume',
  outputUnit: 'ft3',
  formula: 'V = sum of the parts',
  validity: 'parts whose volume is stated or follows from their tube',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['driers, valves and fittings add too little to count'],
  examples: [
    {
      inputs: { volumes: ['0.747 L', '4.759 L'] },
      expect: '5.506 L',
      tolerance: 1e-9,
      source: 'handbook WE-30: the two lines',
    },
  ],
  compute: ({ volumes }, { say }) => {
    const value = volumes.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [
        `${volumes.map((one) => say('volume', one, 'ft3')).join(' + ')} = ${say('volume', value, 'ft3')}`,
      ],
    };
  },
});
