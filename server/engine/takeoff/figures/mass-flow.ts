import { dutyOf, workingAssumption, workingInputs } from '../cycle';
import { relation } from '../relation';

/** Refrigerant that a capacity takes, kg/s. */
export const massFlow = relation({
  name: 'mass-flow',
  title: 'Refrigerant flow for the capacity',
  group: 13,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    capacity: { kind: 'power', title: 'capacity', from: '`capacity` of the system or the line', valid: [1, 1e8] },
    ...workingInputs,
  },
  output: 'mass-flow',
  formula: 'm = capacity / (enthalpy of the suction vapour - enthalpy of the liquid)',
  validity: 'within the range of the tables',
  sources: ['energy balance; enthalpies from the property tables'],
  confidence: 'computed',
  assumptions: [workingAssumption, 'all superheat is useful'],
  examples: [
    {
      inputs: {
        refrigerant: 'R-22',
        capacity: '36000 Btu/h',
        evaporating: '40 degF',
        superheat: '10 Δ°F',
        condensing: '105 degF',
        subcooling: '10 Δ°F',
      },
      expect: '8.32 lb/min',
      tolerance: 5e-3,
      source: 'handbook section 12, WE-26',
    },
  ],
  compute: ({ refrigerant, capacity, ...working }, { say }) => {
    const duty = dutyOf(refrigerant, working);
    if (duty === null) return { refused: `The tables of ${refrigerant.name} do not reach these temperatures.` };
    const value = capacity / duty.effect;
    return {
      value,
      workings: () => [
        `enthalpy of the suction vapour ${say('enthalpy', duty.vapourEnthalpy, 'Btu/lb')} - of the liquid ${say('enthalpy', duty.liquidEnthalpy, 'Btu/lb')} = ${say('enthalpy', duty.effect, 'Btu/lb')}`,
        `${say('power', capacity)} / ${say('enthalpy', duty.effect, 'Btu/lb')} = ${say('mass-flow', value)}`,
      ],
    };
  },
});
