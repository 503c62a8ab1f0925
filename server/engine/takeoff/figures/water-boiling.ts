import { waterBoilingTemperature } from '../../properties';
import { relation } from '../relation';

/** Temperature at which water boils (ice turns to vapour) at a level of vacuum, K. */
export const waterBoiling = relation({
  name: 'water-boiling',
  title: 'Boiling temperature of water at the level',
  group: 9,
  inputs: { level: { kind: 'pressure', title: 'level', from: 'the level of the `evacuate` step', valid: [1, 2e5] } },
  output: 'temperature',
  formula: 'temperature at which the vapour pressure of water or ice equals the level (IAPWS)',
  validity: '-40 to 300 °F',
  sources: ['vapour pressure of water and ice, IAPWS'],
  confidence: 'published',
  assumptions: ['pure water'],
  examples: [
    {
      inputs: { level: '500 micron' },
      expect: '-12 degF',
      tolerance: 2e-3,
      source: 'handbook 8.3: at 500 micron about -12 °F',
    },
    { inputs: { level: '4588 micron' }, expect: '32 degF', tolerance: 1e-4, source: 'handbook 8.3' },
    {
      inputs: { level: '31.8 torr' },
      expect: '30 degC',
      tolerance: 2e-4,
      source: 'handbook WE-24: 31.8 mmHg at 30 °C (published chart)',
    },
    {
      inputs: { level: '101325 Pa absolute' },
      expect: '99.97 degC',
      tolerance: 1e-4,
      source: 'boiling point at 1 atm, ITS-90',
    },
  ],
  compute: ({ level }, { say }) => {
    const value = waterBoilingTemperature(level);
    if (value === null) return { refused: `The vapour pressure of water is not known at ${say('pressure', level)}.` };
    return {
      value,
      notes:
        value < 273.15 ? ['At this level water stands as ice: it must be gone before, or the tube kept warm.'] : [],
      workings: () => [`vapour pressure of water is ${say('pressure', level)} at ${say('temperature', value)}`],
    };
  },
});
