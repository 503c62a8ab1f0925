import { pumpUltimate } from '../../reference/evacuation';
import { fact } from '../../reference/fact';
import { hoseConductanceConfidence, hoseConductanceSource } from '../../reference/hose-conductance';
import { speedAtCircuit } from '../pump-flow';
import { relation } from '../relation';

const one = fact('count', 1, 1, 'one hose', 'practice');
/** Air at 1 atm, m3/s: 5e-5 to 5e-4 Pa m3/s given off by oil and seals of a clean circuit. */
const gasGivenOff = fact(
  'volume-flow',
  5e-5 / 101325,
  5e-4 / 101325,
  'what oil and seals of a clean circuit give off, an estimate, no source',
  'practice',
);

/** The level that pump and hoses settle at against what the circuit gives off, Pa absolute. */
export const reachableLevel = relation({
  name: 'reachable-level',
  title: 'Level that pump and hoses can reach',
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
    ultimate: {
      kind: 'pressure',
      title: 'ultimate level of the pump',
      from: '`ultimate` of the pump',
      default: pumpUltimate,
      valid: [0, 1e4],
    },
    given: {
      kind: 'volume-flow',
      as: 'mL/min',
      title: 'gas that the circuit gives off',
      from: 'nothing in the plan',
      default: gasGivenOff,
    },
  },
  output: 'pressure',
  formula: 'p = p ultimate + Q / S(p)',
  validity: 'dry and tight circuits',
  sources: ['steady state of vacuum physics', hoseConductanceSource],
  confidence: hoseConductanceConfidence,
  assumptions: ['no water and no leak'],
  examples: [
    {
      inputs: { pump: '6 cfm', bore: '0.75 in', length: '3 ft', ultimate: '20 micron', given: '0 mL/min' },
      expect: '20 micron',
      tolerance: 1e-6,
      source: 'limit: nothing given off',
    },
    {
      inputs: { pump: '6 cfm', bore: '0.75 in', length: '3 ft', ultimate: '0 micron', given: '80.1 mL/min' },
      expect: '500 micron',
      tolerance: 0.03,
      source:
        'by hand on handbook 8.5: 4.3 cfm at 500 micron through 3 ft of 3/4 hose carry 4.3 × 500/760000 cfm of air',
    },
  ],
  compute: ({ pump, bore, length, hoses, ultimate, given }, { say }) => {
    const load = given * 101325;
    const line = { bore, length, number: hoses };
    let level = Math.max(ultimate, 1e-3);
    // Speed rises with pressure, so that each turn brings the level nearer to where load and speed agree.
    for (let turn = 0; turn < 60; turn++) level = ultimate + load / speedAtCircuit(pump, line, level);
    return {
      value: level,
      workings: () => [
        `speed at the circuit = ${say('volume-flow', speedAtCircuit(pump, line, level), 'cfm')} at ${say('pressure', level)}`,
        `${say('pressure', ultimate)} + ${say('pressure-difference', 101325, 'micron')} × ${say('volume-flow', given, 'mL/min')} / ${say('volume-flow', speedAtCircuit(pump, line, level), 'L/min')} = ${say('pressure', level)}`,
      ],
    };
  },
});
