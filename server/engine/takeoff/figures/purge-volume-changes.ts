import { nitrogenMass } from '../../properties';
import { nitrogenDensity } from '../../properties/gas-flow';
import { gasTemperature, purgeVolumeChanges as usual } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

/** How often a purge changes the gas of a line, at the pressure in it. */
export const purgeVolumeChanges = relation({
  name: 'purge-volume-changes',
  title: 'Volume changes of a purge',
  group: 6,
  inputs: {
    nitrogen: { kind: 'volume', as: 'scf', title: 'nitrogen of the purge', from: '`for` in the `purge` step' },
    lineVolume: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume of the line',
      from: '`tube` and `length` of the line',
      valid: [1e-6, 100],
    },
    pressure: {
      kind: 'pressure',
      title: 'purge pressure',
      from: 'the pressure in the `purge` step',
      valid: [5e4, 600 * psi],
    },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the gas',
      from: '`outdoors` of the site',
      default: gasTemperature,
      valid: [240, 345],
    },
  },
  output: 'count',
  outputDigits: 3,
  formula: 'n = V nitrogen × density at 70 °F and 1 atm / (V line × density at the purge pressure)',
  validity: 'one line in the path, nitrogen up to 600 psig',
  sources: ['reference density of nitrogen (fitted tables)', usual.source],
  confidence: 'computed',
  assumptions: ['the line stands at the purge pressure over its whole length, which counts the fewest changes'],
  examples: [
    {
      inputs: { nitrogen: '1.94 scf', lineVolume: '0.194 ft3', pressure: '0 psig' },
      expect: '10',
      tolerance: 2e-3,
      source: 'handbook 6.3: 10 changes of 0.194 ft3 are 1.9 scf',
    },
  ],
  compute: ({ nitrogen, lineVolume, pressure, temperature }, { say }) => {
    const density = nitrogenDensity(pressure, temperature);
    if (density === null) return { refused: `There is no density of nitrogen at ${say('pressure', pressure)}.` };
    const value = nitrogenMass(nitrogen) / (lineVolume * density);
    return {
      value,
      workings: () => [
        `one filling = ${say('volume', lineVolume, 'ft3')} × ${say('density', density)} = ${say('mass', lineVolume * density, 'oz')}`,
        `nitrogen = ${say('volume', nitrogen, 'scf')} × ${say('density', nitrogenMass(1))} = ${say('mass', nitrogenMass(nitrogen), 'oz')}`,
        `changes = ${say('mass', nitrogenMass(nitrogen), 'oz')} / ${say('mass', lineVolume * density, 'oz')} = ${value.toFixed(1)}`,
      ],
    };
  },
});
