import { fact } from '../../reference/fact';
import { hoseConductanceConfidence, hoseConductanceSource } from '../../reference/hose-conductance';
import { conductance, speedAtCircuit } from '../pump-flow';
import { relation } from '../relation';

const one = fact('count', 1, 1, 'one hose', 'practice');

/** What is left of a pump's speed behind its hoses, m3/s. */
export const effectivePumpSpeed = relation({
  name: 'effective-pump-speed',
  title: 'Speed of the pump at the circuit',
  group: 9,
  inputs: {
    pump: { kind: 'volume-flow', as: 'cfm', title: 'flow of the pump', from: '`flow` of the pump', valid: [1e-6, 1] },
    bore: { kind: 'length', as: 'in', title: 'bore of the hoses', from: '`bore` of the hose', valid: [1e-3, 0.1] },
    length: { kind: 'length', title: 'length of the hoses', from: '`length` of the hose', valid: [1e-3, 100] },
    hoses: {
      kind: 'count',
      title: 'number of hoses',
      from: '`with` of the pump in `bring`',
      default: one,
      valid: [1, 10],
    },
    level: { kind: 'pressure', title: 'level', from: 'the level of the `evacuate` step', valid: [0.1, 1e5] },
  },
  output: 'volume-flow',
  outputUnit: 'cfm',
  formula: '1/S = 1/S pump + 1/(n C), C at half the level',
  validity: 'alike hoses side by side, valve cores out',
  sources: ['series formula of vacuum physics', hoseConductanceSource],
  confidence: hoseConductanceConfidence,
  assumptions: ['mean pressure in the hose is half of that at the circuit'],
  examples: (
    [
      ['0.17 in', '5 ft', '1000 micron', '0.06 cfm', 0.1],
      ['0.31 in', '5 ft', '10000 micron', '2.7 cfm', 0.03],
      ['0.31 in', '5 ft', '500 micron', '0.31 cfm', 0.03],
      ['0.50 in', '3 ft', '1000 micron', '3.0 cfm', 0.03],
      ['0.75 in', '3 ft', '500 micron', '4.3 cfm', 0.03],
    ] as const
  ).map(([bore, length, level, expect, tolerance]) => ({
    inputs: { pump: '6 cfm', bore, length, level },
    expect,
    tolerance,
    source: 'handbook 8.5, table of hoses at a pump of 6 cfm',
  })),
  compute: ({ pump, bore, length, hoses, level }, { say }) => {
    const value = speedAtCircuit(pump, { bore, length, number: hoses }, level);
    return {
      value,
      notes:
        value < pump / 2
          ? ['The hoses set the speed, not the pump: wider and shorter ones gain more than a larger pump.']
          : [],
      workings: () => [
        `a hose of ${say('length', bore, 'in')} by ${say('length', length)} at ${say('pressure', level / 2)}: C = ${say('conductance', conductance(bore, length, level / 2), 'cfm')}`,
        `1 / (1/${say('volume-flow', pump, 'cfm')} + 1/(${hoses} × ${say('conductance', conductance(bore, length, level / 2), 'cfm')})) = ${say('volume-flow', value, 'cfm')}`,
      ],
    };
  },
});
