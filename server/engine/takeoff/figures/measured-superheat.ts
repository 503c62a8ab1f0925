import { dewTemperature } from '../../properties';
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

/** Superheat that a pair of readings means, K. */
export const measuredSuperheat = relation({
  ...shared,
  name: 'measured-superheat',
  title: 'Superheat from the readings',
  formula: 'line temperature - dew temperature at the pressure',
  examples: [
    {
      inputs: { refrigerant: 'R-22', pressure: '68.6 psig', temperature: '50 degF' },
      expect: '10 Δ°F',
      tolerance: 0.02,
      source: 'by hand on handbook 3.5',
    },
  ],
  compute: ({ refrigerant, pressure, temperature }, { say }) => {
    const dew = dewTemperature(refrigerant, pressure);
    if (dew === null)
      return { refused: `The tables of ${refrigerant.name} do not reach ${say('pressure', pressure)}.` };
    const value = temperature - dew;
    return {
      value,
      workings: () => [
        `${say('temperature', temperature)} - ${say('temperature', dew)} = ${say('temperature-difference', value)}`,
      ],
    };
  },
});
