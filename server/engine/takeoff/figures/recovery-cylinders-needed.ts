import { relation } from '../relation';

/** Empty recovery cylinders needed for a charge, whole. */
export const recoveryCylindersNeeded = relation({
  name: 'recovery-cylinders-needed',
  title: 'Recovery cylinders needed',
  group: 4,
  inputs: {
    charge: { kind: 'mass', title: 'charge to recover', from: '`recover-charge` of the system' },
    fill: {
      kind: 'mass',
      title: 'most that goes into a cylinder',
      from: '`water-capacity` of the recovery cylinder',
      valid: [0.01, 5000],
    },
  },
  output: 'count',
  formula: 'cylinders = charge / most in one, rounded up',
  validity: 'empty cylinders of one size, one refrigerant, never mixed',
  sources: ['arithmetic on the safe fill'],
  confidence: 'practice',
  assumptions: ['the charge is known; add one where it is not, or where the gas is mixed'],
  examples: [
    {
      inputs: { charge: '95 lb', fill: '25.1 lb' },
      expect: '4',
      tolerance: 0,
      source: 'handbook 2.3, sizing rule: charge over the most of one (WE-05), rounded up',
    },
    { inputs: { charge: '50 lb', fill: '25 lb' }, expect: '2', tolerance: 0, source: 'by hand' },
  ],
  compute: ({ charge, fill }, { say }) => {
    const value = Math.ceil(charge / fill - 1e-9);
    return {
      value,
      workings: () => [`${say('mass', charge)} / ${say('mass', fill)} = ${(charge / fill).toFixed(2)}, so ${value}`],
    };
  },
});
