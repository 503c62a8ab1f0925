import { nitrogenMass, nitrogenStandardVolume } from '../../properties';
import { nitrogenDensity } from '../../properties/gas-flow';
import { fact } from '../../reference/fact';
import { gasTemperature } from '../../reference/nitrogen-practice';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

const fromAtmosphere = fact('pressure', 101325, 101325, 'filled from the atmosphere', 'practice');

/** Nitrogen to fill a volume to a pressure, m3 at 70 °F and 1 atm: a pressure test, a holding charge, a vacuum broken. */
export const fillNitrogen = relation({
  name: 'fill-nitrogen',
  title: 'Nitrogen to fill a section',
  group: 6,
  inputs: {
    volume: {
      kind: 'volume',
      as: 'ft3',
      title: 'volume of the section',
      from: '`tube` and `length` of its lines, `volume` of its parts',
    },
    pressure: {
      kind: 'pressure',
      title: 'pressure to reach',
      from: 'the pressure in the step',
      valid: [0, 6000 * psi],
    },
    start: {
      kind: 'pressure',
      title: 'pressure to start from',
      from: 'what the section holds',
      default: fromAtmosphere,
      valid: [0, 6000 * psi],
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
  formula: 'V = V section × (density at the pressure - density at the start) / density at 70 °F and 1 atm',
  validity: 'nitrogen up to 5000 psig, -27 to 160 °F',
  sources: ['reference density of nitrogen (fitted tables)'],
  confidence: 'computed',
  assumptions: ['what stands in the section at the start is gas and stays'],
  examples: [
    {
      inputs: { volume: '0.194 ft3', pressure: '500 psig' },
      expect: '6.65 scf',
      tolerance: 0.006,
      source: 'handbook section 12, WE-42',
    },
    {
      inputs: { volume: '1 ft3', pressure: '2265 psig', start: '0 psia' },
      expect: '151.3 scf',
      tolerance: 2e-3,
      source: 'handbook 6.1: scf per ft3 of water volume',
    },
    {
      inputs: { volume: '1 ft3', pressure: '500 psig', start: '0 psia' },
      expect: '35.2 scf',
      tolerance: 2e-3,
      source: 'handbook 6.1: scf per ft3 of water volume',
    },
    {
      inputs: { volume: '1 ft3', pressure: '0 psig', start: '500 micron' },
      expect: '0.9993 scf',
      tolerance: 1e-3,
      source: 'by hand, a vacuum broken: one volume less 0.5 of 760 torr',
    },
    {
      inputs: { volume: '29.5 L', pressure: '2000 psig', start: '0 psia' },
      expect: '140.5 scf',
      tolerance: 2e-3,
      source: 'handbook section 12, WE-22',
    },
  ],
  compute: ({ volume, pressure, start, temperature }, { say }) => {
    const full = nitrogenDensity(pressure, temperature);
    const before = nitrogenDensity(start, temperature);
    if (full === null || before === null)
      return { refused: `There is no density of nitrogen at ${say('pressure', pressure)}.` };
    if (pressure < start)
      return {
        refused: `The section holds ${say('pressure', start)} already, more than ${say('pressure', pressure)}.`,
      };
    const mass = volume * (full - before);
    const value = nitrogenStandardVolume(mass);
    return {
      value,
      notes: ['Counted at 70 °F and 1 atm.'],
      workings: () => [
        `density at ${say('pressure', pressure)} = ${say('density', full)}, at ${say('pressure', start)} = ${say('density', before)}`,
        `nitrogen = ${say('volume', volume, 'ft3')} × (${say('density', full)} - ${say('density', before)}) = ${say('mass', mass)}; at ${say('density', nitrogenMass(1))} of 70 °F and 1 atm = ${say('volume', value, 'scf')}`,
      ],
    };
  },
});
