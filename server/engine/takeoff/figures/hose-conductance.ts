import { hoseConductanceConfidence, hoseConductanceSource } from '../../reference/hose-conductance';
import { conductance } from '../pump-flow';
import { relation } from '../relation';

/** Conductance of a vacuum hose for air at 20 °C, m3/s. */
export const hoseConductance = relation({
  name: 'hose-conductance',
  title: 'Conductance of a vacuum hose',
  group: 9,
  inputs: {
    bore: { kind: 'length', as: 'in', title: 'bore of the hose', from: '`bore` of the hose', valid: [1e-3, 0.1] },
    length: { kind: 'length', title: 'length of the hose', from: '`length` of the hose', valid: [1e-3, 100] },
    pressure: {
      kind: 'pressure',
      title: 'mean pressure in the hose',
      from: 'the level of the `evacuate` step',
      valid: [0, 1e5],
    },
  },
  output: 'conductance',
  formula: 'C = 121 d³/L + 1370 d⁴ p/L, m³/s (d, L in m, p in Pa); L + 4/3 d for hoses shorter than 20 d',
  validity: 'round smooth hose, laminar to molecular flow of air',
  sources: [hoseConductanceSource],
  confidence: hoseConductanceConfidence,
  assumptions: ['air at 20 °C'],
  examples: [
    {
      inputs: { bore: '0.31 in', length: '5 ft', pressure: '0 psia' },
      expect: '0.039 L/s',
      tolerance: 0.015,
      source: 'handbook 8.5, molecular',
    },
    {
      inputs: { bore: '0.75 in', length: '3 ft', pressure: '0 psia' },
      expect: '0.91 L/s',
      tolerance: 0.01,
      source: 'handbook 8.5, molecular',
    },
    {
      inputs: { bore: '2.0 in', length: '40 in', pressure: '0 psia' },
      expect: '15.6 L/s',
      tolerance: 0.01,
      source: 'handbook WE-18: 31.2 L/s by 12.1 d³/L for 20 in, half of it for 40 in',
    },
  ],
  compute: ({ bore, length, pressure }, { say }) => {
    const value = conductance(bore, length, pressure);
    const molecular = conductance(bore, length, 0);
    const flow = (one: number): string => say('conductance', one, 'cfm');
    return {
      value,
      workings: () => [
        `d = ${bore.toPrecision(4)} m, L = ${length.toPrecision(4)} m, p = ${pressure.toPrecision(4)} Pa`,
        `molecular ${flow(molecular)} + viscous ${flow(value - molecular)} at ${say('pressure', pressure)} = ${flow(value)}`,
      ],
    };
  },
});
