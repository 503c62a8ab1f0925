import { dewPressure, dewTemperature } from '../../properties';
import { relation } from '../relation';

/** Loss of saturation temperature that a pressure drop means, K. */
export const saturationLoss = relation({
  name: 'saturation-loss',
  title: 'Loss of saturation temperature',
  group: 13,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    temperature: { kind: 'temperature', title: 'saturation temperature', from: '`evaporating` of the system' },
    drop: {
      kind: 'pressure-difference',
      title: 'pressure drop',
      from: '`length` and `tube` of the line',
      valid: [0, 5e6],
    },
  },
  output: 'temperature-difference',
  formula: 'ΔT = T - dew temperature at (dew pressure at T - Δp)',
  validity: 'within the range of the tables',
  sources: ['property tables of the refrigerant'],
  confidence: 'computed',
  assumptions: ['by the dew line'],
  examples: [
    {
      inputs: { refrigerant: 'R-22', temperature: '40 degF', drop: '2.85 psi' },
      expect: '1.99 Δ°F',
      tolerance: 0.02,
      source: 'handbook section 12, WE-28',
    },
  ],
  compute: ({ refrigerant, temperature, drop }, { say }) => {
    const pressure = dewPressure(refrigerant, temperature);
    const after = pressure === null ? null : dewTemperature(refrigerant, pressure - drop);
    if (after === null) return { refused: `The tables of ${refrigerant.name} do not reach that far down.` };
    return {
      value: temperature - after,
      workings: () => [
        `dew pressure at ${say('temperature', temperature)} = ${say('pressure', pressure!)}, less ${say('pressure-difference', drop)}: dew temperature ${say('temperature', after)}`,
        `${say('temperature', temperature)} - ${say('temperature', after)} = ${say('temperature-difference', temperature - after)}`,
      ],
    };
  },
});
