import { nitrogenStandardVolume } from '../../properties';
import { nitrogenDensity } from '../../properties/gas-flow';
import { fact } from '../../reference/fact';
import { gasTemperature, vacuumBreakPressure } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

const fromEmpty = fact('pressure', 0, 0, 'filled from a vacuum too deep to count', 'practice');

/** Nitrogen that breaks a vacuum, m3 at 70 °F and 1 atm. */
export const vacuumBreakNitrogen = relation({
  name: 'vacuum-break-nitrogen',
  title: 'Nitrogen to break a vacuum',
  group: 6,
  inputs: {
    volume: {
      kind: 'volume',
      title: 'volume of the section',
      from: '`tube` and `length` of its lines, `volume` of its parts',
    },
    pressure: {
      kind: 'pressure',
      title: 'pressure to reach',
      from: '`to` in the `break-vacuum` step',
      default: vacuumBreakPressure,
      valid: [0, 600 * psi],
    },
    start: {
      kind: 'pressure',
      title: 'level to start from',
      from: 'the level of the `evacuate` step',
      default: fromEmpty,
      valid: [0, 110e3],
    },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the gas',
      from: '`outdoors` of the site',
      default: gasTemperature,
      valid: [240, 345],
    },
  },
  output: 'volume',
  outputUnit: 'scf',
  formula: 'V = V section × (density at the pressure - density at the level) / density at 70 °F and 1 atm',
  validity: 'nitrogen up to 600 psig',
  sources: ['reference density of nitrogen (fitted tables)', vacuumBreakPressure.source],
  confidence: 'computed',
  assumptions: ['the section is as warm as the gas'],
  examples: [
    {
      inputs: { volume: '1 ft3', pressure: '0 psig', start: '500 micron' },
      expect: '0.9993 scf',
      tolerance: 1e-3,
      source: 'by hand: one volume less 0.5 of 760 torr',
    },
    {
      inputs: { volume: '1 ft3', pressure: '14.696 psig' },
      expect: '2 scf',
      tolerance: 2e-3,
      source: 'by hand: two atmospheres in one volume',
    },
  ],
  compute: ({ volume, pressure, start, temperature }, { say }) => {
    const full = nitrogenDensity(pressure, temperature);
    const before = nitrogenDensity(start, temperature);
    if (full === null || before === null)
      return { refused: `There is no density of nitrogen at ${say('pressure', pressure)}.` };
    if (pressure < start) return { refused: `The section stands at ${say('pressure', start)} already.` };
    const value = nitrogenStandardVolume(volume * (full - before));
    return {
      value,
      notes: ['Counted at 70 °F and 1 atm.'],
      workings: () => [
        `nitrogen = ${say('volume', volume, 'ft3')} × (${say('density', full)} - ${say('density', before)}) / density at 70 °F and 1 atm = ${say('volume', value, 'scf')}`,
      ],
    };
  },
});
