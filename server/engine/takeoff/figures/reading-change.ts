import { fact } from '../../reference/fact';
import { fahrenheitDifference, psi } from '../../reference/table-units';
import { relation } from '../relation';

const oneDegree = fact(
  'temperature-difference',
  fahrenheitDifference,
  fahrenheitDifference,
  'for each degree Fahrenheit',
  'computed',
);

/** How the reading of a tight section moves with its temperature, Pa. */
export const readingChange = relation({
  name: 'reading-change',
  title: 'Change of the test reading with temperature',
  group: 8,
  inputs: {
    pressure: { kind: 'pressure', title: 'test pressure', from: '`test-pressure` of the plan', valid: [0, 2000 * psi] },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the tube',
      from: '`outdoors` of the site',
      valid: [220, 360],
    },
    change: {
      kind: 'temperature-difference',
      title: 'change of temperature',
      from: 'nothing in the plan',
      default: oneDegree,
    },
  },
  output: 'pressure-difference',
  formula: 'Δp = p × ΔT / T, absolute',
  validity: 'dry gas in a closed volume up to 2000 psig',
  sources: ['law of Gay-Lussac'],
  confidence: 'computed',
  assumptions: ['the whole section changes alike'],
  examples: [
    {
      inputs: { pressure: '150 psig', temperature: '70 degF' },
      expect: '0.31 psi',
      tolerance: 5e-3,
      source: 'handbook 7.3',
    },
    {
      inputs: { pressure: '300 psig', temperature: '70 degF' },
      expect: '0.59 psi',
      tolerance: 8e-3,
      source: 'handbook 7.3',
    },
    {
      inputs: { pressure: '500 psig', temperature: '70 degF' },
      expect: '0.97 psi',
      tolerance: 5e-3,
      source: 'handbook 7.3',
    },
    {
      inputs: { pressure: '600 psig', temperature: '70 degF' },
      expect: '1.16 psi',
      tolerance: 5e-3,
      source: 'handbook 7.3',
    },
  ],
  compute: ({ pressure, temperature, change }, { say, absolute }) => {
    const value = (pressure * change) / temperature;
    return {
      value,
      workings: () => [
        `${say('pressure', pressure, 'psia')} × ${say('temperature-difference', change)} / ${absolute(temperature)} = ${say('pressure-difference', value)}`,
      ],
    };
  },
});
