import { bubbleTemperature } from '../../properties';
import { relation } from '../relation';

const refrigerant = { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' } as const;
const sources = ['property tables of the refrigerant: bubble line for subcooling, dew line for superheat'];
const examplesFrom = 'by hand on the saturation values of handbook 3.5';

/** What the liquid line must read for a subcooling at a pressure, K. */
export const liquidLineTarget = relation({
  name: 'liquid-line-target',
  title: 'Liquid line temperature for the subcooling',
  group: 11,
  inputs: {
    refrigerant,
    pressure: { kind: 'pressure', title: 'high-side pressure', from: 'the reading of the high side' },
    subcooling: {
      kind: 'temperature-difference',
      title: 'subcooling',
      from: '`subcooling` of the system',
      valid: [0, 40],
    },
  },
  output: 'temperature',
  formula: 'T = bubble temperature at the pressure - subcooling',
  validity: 'within the range of the tables',
  sources,
  confidence: 'computed',
  assumptions: ['pressure read where the temperature is read'],
  examples: [
    {
      inputs: { refrigerant: 'R-454B', pressure: '325.4 psig', subcooling: '10 Δ°F' },
      expect: '95 degF',
      tolerance: 1e-3,
      source: examplesFrom,
    },
  ],
  compute: ({ refrigerant: gas, pressure, subcooling }, { say }) => {
    const bubble = bubbleTemperature(gas, pressure);
    if (bubble === null) return { refused: `The tables of ${gas.name} do not reach ${say('pressure', pressure)}.` };
    return {
      value: bubble - subcooling,
      workings: () => [
        `bubble temperature at ${say('pressure', pressure)} = ${say('temperature', bubble)}`,
        `${say('temperature', bubble)} - ${say('temperature-difference', subcooling)} = ${say('temperature', bubble - subcooling)}`,
      ],
    };
  },
});
