import { gaugeResolution, temperatureUncertainty } from '../../reference/pressure-test';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

/** The loss that gauge and thermometer cannot tell from none, Pa. */
export const allowedLoss = relation({
  name: 'allowed-loss',
  title: 'Loss allowed in a pressure test',
  group: 8,
  inputs: {
    pressure: { kind: 'pressure', title: 'test pressure', from: '`test-pressure` of the plan', valid: [0, 2000 * psi] },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the tube',
      from: '`outdoors` of the site',
      valid: [220, 360],
    },
    gauge: {
      kind: 'pressure-difference',
      title: 'smallest step of the gauge',
      from: 'the gauge in `bring`',
      default: gaugeResolution,
      valid: [0, 1e6],
    },
    thermometer: {
      kind: 'temperature-difference',
      title: 'uncertainty of the thermometer',
      from: 'the thermometer in `bring`',
      default: temperatureUncertainty,
      valid: [0, 20],
    },
  },
  output: 'pressure-difference',
  formula: 'Δp = step of the gauge + uncertainty of the temperature × p / T',
  validity: 'dry gas in a closed volume up to 2000 psig, after correction to one temperature',
  sources: ['law of Gay-Lussac', gaugeResolution.source, temperatureUncertainty.source],
  confidence: 'practice',
  assumptions: ['no leak is allowed; this is what the instruments cannot show'],
  examples: [
    {
      inputs: { pressure: '500 psig', temperature: '70 degF', gauge: '0 psi' },
      expect: '0.97 psi',
      tolerance: 5e-3,
      source: 'handbook 7.3: 500 psig within 1 °F is about 1 psi',
    },
    {
      inputs: { pressure: '450 psig', temperature: '70 degF' },
      expect: '1.877 psi',
      tolerance: 2e-3,
      source: 'by hand: 1 + 464.7 / 529.67',
    },
  ],
  compute: ({ pressure, temperature, gauge, thermometer }, { say, absolute }) => {
    const byTemperature = (pressure * thermometer) / temperature;
    const difference = (one: number): string => say('pressure-difference', one);
    return {
      value: gauge + byTemperature,
      workings: () => [
        `thermometer: ${say('temperature-difference', thermometer)} × ${say('pressure', pressure, 'psia')} / ${absolute(temperature)} = ${difference(byTemperature)}`,
        `with the gauge: ${difference(gauge)} + ${difference(byTemperature)} = ${difference(gauge + byTemperature)}`,
      ],
    };
  },
});
