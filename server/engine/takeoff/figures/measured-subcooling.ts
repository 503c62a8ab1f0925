import { bubbleTemperature } from '../../properties';
import { relation } from '../relation';

const inputs = {
  refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
  pressure: { kind: 'pressure', title: 'pressure', from: 'the reading of the gauge' },
  temperature: { kind: 'temperature', title: 'line temperature', from: 'the reading of the thermometer' },
} as const;
const shared = {
  group: 11,
  inputs,
  output: 'temperature-difference',
  validity: 'within the range of the tables',
  sources: ['property tables of the refrigerant'],
  confidence: 'computed',
  assumptions: ['pressure read where the temperature is read'],
} as const;

/** Subcooling that a pair of readings means, K: less than nothing is flash gas or a wrong reading. */
export const measuredSubcooling = relation({
  ...shared,
  name: 'measured-subcooling',
  title: 'Subcooling from the readings',
  formula: 'bubble temperature at the pressure - line temperature',
  examples: [
    {
      inputs: { refrigerant: 'R-410A', pressure: '341.9 psig', temperature: '95 degF' },
      expect: '10 Δ°F',
      tolerance: 0.02,
      source: 'by hand on handbook 3.5',
    },
  ],
  compute: ({ refrigerant, pressure, temperature }, { say }) => {
    const bubble = bubbleTemperature(refrigerant, pressure);
    if (bubble === null)
      return { refused: `The tables of ${refrigerant.name} do not reach ${say('pressure', pressure)}.` };
    const value = bubble - temperature;
    return {
      value,
      workings: () => [
        `${say('temperature', bubble)} - ${say('temperature', temperature)} = ${say('temperature-difference', value)}`,
      ],
    };
  },
});
