import { pumpUltimate } from '../../reference/evacuation';
import { fact } from '../../reference/fact';
import { hoseConductanceConfidence, hoseConductanceSource } from '../../reference/hose-conductance';
import { pumpDown, speedAtCircuit } from '../pump-flow';
import { relation } from '../relation';

const one = fact('count', 1, 1, 'one hose', 'practice');
const fromAtmosphere = fact('pressure', 101325, 101325, 'started at the atmosphere', 'practice');

/** Time to pump a dry, tight circuit down, s. */
export const pumpDownTime = relation({
  name: 'pump-down-time',
  title: 'Time to pump down, without drying',
  group: 9,
  inputs: {
    volume: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume of the section',
      from: '`tube` and `length` of its lines, `volume` of its parts',
    },
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
    start: {
      kind: 'pressure',
      title: 'pressure at the start',
      from: 'what the section holds',
      default: fromAtmosphere,
      valid: [1, 2e5],
    },
    level: { kind: 'pressure', title: 'level to reach', from: 'the level of the `evacuate` step', valid: [0.1, 1e5] },
    ultimate: {
      kind: 'pressure',
      title: 'ultimate level of the pump',
      from: '`ultimate` of the pump',
      default: pumpUltimate,
      valid: [0, 1e4],
    },
  },
  output: 'time',
  formula: 't = ∫ V / (S(p) × (1 - p ultimate/p)) × dp/p from the start to the level',
  validity: 'dry and tight circuits',
  sources: ['pump-down formula of vacuum physics', hoseConductanceSource],
  confidence: hoseConductanceConfidence,
  assumptions: ['no water, no oil giving off gas: real pulls take 30 to 90 minutes'],
  examples: [
    {
      inputs: {
        volume: '30 L',
        pump: '6 cfm',
        bore: '3.9 in',
        length: '0.1 ft',
        level: '500 micron',
        ultimate: '0 micron',
      },
      expect: '78 s',
      tolerance: 0.01,
      source: 'handbook 8.5: ideal time for 30 L at 6 cfm to 500 micron',
    },
  ],
  compute: ({ volume, pump, bore, length, hoses, start, level, ultimate }, { say }) => {
    const line = { bore, length, number: hoses };
    const value = pumpDown(volume, pump, line, start, level, ultimate);
    if (value === null)
      return {
        refused: `The pump does not go below ${say('pressure', ultimate)}; ${say('pressure', level)} is out of its reach.`,
      };
    return {
      value,
      notes: [
        'An estimate that leaves drying out: water and oil make it longer.',
        ...(speedAtCircuit(pump, line, level) < pump / 2
          ? ['At the level the hoses set the time, not the pump: wider and shorter ones gain more than a larger pump.']
          : []),
      ],
      workings: () => [
        `from ${say('pressure', start)} to ${say('pressure', level)}: ${say('volume', volume, 'ft3')}, speed at the circuit ${say('volume-flow', speedAtCircuit(pump, line, start), 'cfm')} at the start and ${say('volume-flow', speedAtCircuit(pump, line, level), 'cfm')} at the end`,
        `without hoses: ${say('volume', volume, 'ft3')} / ${say('volume-flow', pump, 'cfm')} × ln(${say('pressure', start, 'psia')} / ${say('pressure', level, 'psia')}) = ${say('time', (volume / pump) * Math.log(start / level))}`,
        `summed in small steps of pressure: ${say('time', value)}`,
      ],
    };
  },
});
