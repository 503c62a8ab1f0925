import { dewPressure, superheatedVapour } from '../../properties';
import { workingInputs } from '../cycle';
import { relation } from '../relation';

/** Density of the suction vapour, kg/m3. */
export const suctionDensity = relation({
  name: 'suction-density',
  title: 'Density of the suction vapour',
  group: 13,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    evaporating: workingInputs.evaporating,
    superheat: workingInputs.superheat,
  },
  output: 'density',
  formula: 'density at the dew pressure of the evaporating temperature and that temperature + superheat',
  validity: 'within the range of the tables',
  sources: ['property tables of the refrigerant'],
  confidence: 'computed',
  assumptions: ['no pressure drop up to the place'],
  examples: [
    {
      inputs: { refrigerant: 'R-22', evaporating: '40 degF', superheat: '10 Δ°F' },
      expect: '1.477 lb/ft3',
      tolerance: 3e-3,
      source: 'handbook section 12, WE-26',
    },
  ],
  compute: ({ refrigerant, evaporating, superheat }, { say }) => {
    const pressure = dewPressure(refrigerant, evaporating);
    const vapour = pressure === null ? null : superheatedVapour(refrigerant, pressure, evaporating + superheat);
    if (pressure === null || vapour === null)
      return {
        refused: `The tables of ${refrigerant.name} do not reach ${say('temperature', evaporating)} with this superheat.`,
      };
    return {
      value: vapour.density,
      workings: () => [
        `at ${say('pressure', pressure)} and ${say('temperature', evaporating + superheat)}: ${say('density', vapour.density)}`,
      ],
    };
  },
});
