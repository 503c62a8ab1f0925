import { nitrogenHeatRatio } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

/** Energy that a burst would set free, J. */
export const storedEnergy = relation({
  name: 'stored-energy',
  title: 'Energy stored in the test gas',
  group: 8,
  inputs: {
    volume: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume under pressure',
      from: '`tube` and `length` of its lines, `volume` of its parts',
    },
    pressure: { kind: 'pressure', title: 'test pressure', from: '`test-pressure` of the plan', valid: [0, 6000 * psi] },
  },
  output: 'energy',
  outputUnit: 'kJ',
  formula: 'E = p V / (γ - 1) × (1 - (p₀/p)^((γ-1)/γ)), γ = 1.4',
  validity: 'gas, no liquid, expanding without heat from outside',
  sources: ['Brode-type isentropic expansion of an ideal gas, text-book form'],
  confidence: 'computed',
  assumptions: ['all of the gas lets go at once'],
  examples: [
    { inputs: { volume: '5.5 L', pressure: '500 psig' }, expect: '31 kJ', tolerance: 0.01, source: 'handbook 6.4' },
    { inputs: { volume: '30 L', pressure: '500 psig' }, expect: '170 kJ', tolerance: 0.01, source: 'handbook 6.4' },
    {
      inputs: { volume: '30 L', pressure: '0 psig' },
      expect: '0 kJ',
      tolerance: 1e-6,
      source: 'limit: no pressure, no energy',
    },
  ],
  compute: ({ volume, pressure }, { say, atmosphere }) => {
    const gamma = nitrogenHeatRatio;
    const part = 1 - (atmosphere / Math.max(pressure, atmosphere)) ** ((gamma - 1) / gamma);
    const value = ((pressure * volume) / (gamma - 1)) * part;
    return {
      value,
      workings: () => [
        `1 - (${say('pressure', atmosphere, 'psia')} / ${say('pressure', pressure, 'psia')})^(0.4/1.4) = ${part.toFixed(4)}`,
        `${say('pressure', pressure, 'kPa absolute')} × ${say('volume', volume, 'L')} / 0.4 × ${part.toFixed(4)} = ${say('energy', value, 'kJ')}`,
      ],
    };
  },
});
