import { nitrogen, nitrogenMass } from '../../properties';
import { nitrogenDensity } from '../../properties/gas-flow';
import { gasTemperature } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

/** Pressure left in a nitrogen cylinder after a draw, Pa absolute. */
export const cylinderAfterDraw = relation({
  name: 'cylinder-after-draw',
  title: 'Pressure left in a nitrogen cylinder',
  group: 6,
  inputs: {
    waterVolume: {
      kind: 'volume',
      as: 'ft3',
      title: 'water volume',
      from: '`water-volume` of the cylinder',
      valid: [1e-4, 1],
    },
    pressure: { kind: 'pressure', title: 'pressure before', from: '`full` of the cylinder', valid: [1e3, 5000 * psi] },
    filledAt: {
      kind: 'temperature',
      title: 'temperature at which that pressure was read',
      from: 'nothing in the plan: cylinders are filled to their marking at 70 °F',
      default: gasTemperature,
      valid: [240, 345],
    },
    drawn: { kind: 'volume', as: 'scf', title: 'nitrogen drawn', from: 'the step that draws it' },
    least: {
      kind: 'pressure',
      title: 'pressure that the step asks',
      from: 'the pressure in the step',
      optional: true,
      valid: [0, 5000 * psi],
    },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the cylinder',
      from: '`outdoors` of the site',
      default: gasTemperature,
      valid: [240, 345],
    },
  },
  output: 'pressure',
  formula:
    'density after = density before - drawn × density at 70 °F and 1 atm / V water; the pressure that goes with it at the temperature of the cylinder',
  validity: 'nitrogen up to 5000 psig, -27 to 160 °F',
  sources: ['reference density of nitrogen (fitted tables)'],
  confidence: 'computed',
  assumptions: [
    'the cylinder comes back to its temperature after the draw',
    'a cylinder cannot deliver below the pressure asked',
  ],
  examples: [
    {
      inputs: { waterVolume: '1 ft3', pressure: '2265 psig', drawn: '116.1 scf' },
      expect: '500 psig',
      tolerance: 4e-3,
      source: 'handbook 6.1: 151.3 - 35.2 scf per ft3 between 2265 and 500 psig',
    },
    {
      inputs: { waterVolume: '1.55 ft3', pressure: '2265 psig', drawn: '0 scf' },
      expect: '2265 psig',
      tolerance: 1e-6,
      source: 'limit: nothing drawn',
    },
    {
      inputs: { waterVolume: '1.55 ft3', pressure: '1000 psig', drawn: '0 scf', temperature: '20 degF' },
      expect: '904.2 psig',
      tolerance: 0.02,
      source: 'handbook 6.2, p2 = p1 × T2/T1: 1014.7 × 479.67/529.67 - 14.7; a real gas falls up to 2 % lower',
    },
  ],
  compute: ({ waterVolume, pressure, filledAt, drawn, least, temperature }, { say }) => {
    const before = nitrogenDensity(pressure, filledAt);
    if (before === null) return { refused: `There is no density of nitrogen at ${say('pressure', pressure)}.` };
    const after = before - nitrogenMass(drawn) / waterVolume;
    const left = after > 0 ? nitrogen.pressure(after, temperature) : null;
    const asked = `${say('volume', drawn, 'scf')} at ${say('pressure', least ?? 0)}`;
    if (left === null)
      return { refused: `The cylinder does not hold the ${say('volume', drawn, 'scf')} that are drawn.` };
    if (least !== undefined && left < least * (1 - 1e-9))
      return { refused: `The cylinder cannot give ${asked}: it would fall to ${say('pressure', left)}.` };
    return {
      value: left,
      workings: () => [
        `density before, at ${say('temperature', filledAt)} = ${say('density', before)}`,
        `drawn = ${say('volume', drawn, 'scf')} × ${say('density', nitrogenMass(1))} = ${say('mass', nitrogenMass(drawn))}`,
        `density after = ${say('density', before)} - ${say('mass', nitrogenMass(drawn))} / ${say('volume', waterVolume, 'ft3')} = ${say('density', after)}`,
        `pressure at that density and ${say('temperature', temperature)} = ${say('pressure', left)}`,
      ],
    };
  },
});
