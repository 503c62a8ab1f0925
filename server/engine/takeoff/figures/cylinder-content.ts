import { nitrogenMass, nitrogenStandardVolume } from '../../properties';
import { nitrogenDensity } from '../../properties/gas-flow';
import { fact } from '../../reference/fact';
import { gasTemperature } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

const toEmpty = fact('pressure', 101325, 101325, 'down to the atmosphere', 'practice');

/** What a nitrogen cylinder gives before it falls to the pressure that is asked of it, m3 at 70 °F and 1 atm. */
export const cylinderContent = relation({
  name: 'cylinder-content',
  title: 'Nitrogen that a cylinder gives',
  group: 6,
  inputs: {
    waterVolume: {
      kind: 'volume',
      as: 'ft3',
      title: 'water volume',
      from: '`water-volume` of the cylinder',
      valid: [1e-4, 1],
    },
    pressure: {
      kind: 'pressure',
      title: 'pressure in the cylinder',
      from: '`full` of the cylinder',
      valid: [0, 5000 * psi],
    },
    filledAt: {
      kind: 'temperature',
      title: 'temperature at which that pressure was read',
      from: 'nothing in the plan: cylinders are filled to their marking at 70 °F',
      default: gasTemperature,
      valid: [240, 345],
    },
    least: {
      kind: 'pressure',
      title: 'least pressure that it must deliver',
      from: 'the pressure in the step',
      default: toEmpty,
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
  output: 'volume',
  outputUnit: 'scf',
  formula:
    'V = V water × (density as filled - density at the least pressure and its temperature) / density at 70 °F and 1 atm',
  validity: 'nitrogen up to 5000 psig, -27 to 160 °F',
  sources: ['reference density of nitrogen (fitted tables)'],
  confidence: 'computed',
  assumptions: ['the cylinder stays at its temperature', 'it cannot deliver below the pressure asked'],
  examples: [
    {
      inputs: { waterVolume: '1.55 ft3', pressure: '2265 psig', least: '0 psia' },
      expect: '234.5 scf',
      tolerance: 3e-3,
      source: 'handbook 6.2: 234 scf in the trade size 250 at 2265 psig',
    },
    {
      inputs: { waterVolume: '1.73 ft3', pressure: '2640 psig', least: '0 psia' },
      expect: '300 scf',
      tolerance: 3e-3,
      source: 'handbook 6.2: trade size 300 at 2640 psig',
    },
    {
      inputs: { waterVolume: '0.565 ft3', pressure: '2015 psig', least: '0 psia' },
      expect: '77 scf',
      tolerance: 5e-3,
      source: 'handbook 6.2: 77 scf in the trade size 80 at 2015 psig',
    },
  ],
  compute: ({ waterVolume, pressure, filledAt, least, temperature }, { say }) => {
    const full = nitrogenDensity(pressure, filledAt);
    const rest = nitrogenDensity(least, temperature);
    if (full === null || rest === null)
      return { refused: `There is no density of nitrogen at ${say('pressure', pressure)}.` };
    const mass = Math.max(0, waterVolume * (full - rest));
    const value = nitrogenStandardVolume(mass);
    return {
      value,
      notes: [
        'Counted at 70 °F and 1 atm.',
        ...(pressure < least ? [`At ${say('pressure', pressure)} it cannot deliver ${say('pressure', least)}.`] : []),
      ],
      workings: () => [
        `density at ${say('pressure', pressure)} and ${say('temperature', filledAt)} = ${say('density', full)}, at ${say('pressure', least)} and ${say('temperature', temperature)} = ${say('density', rest)}`,
        `gives ${say('volume', waterVolume, 'ft3')} × (${say('density', full)} - ${say('density', rest)}) = ${say('mass', mass)}; at ${say('density', nitrogenMass(1))} of 70 °F and 1 atm = ${say('volume', value, 'scf')}`,
      ],
    };
  },
});
