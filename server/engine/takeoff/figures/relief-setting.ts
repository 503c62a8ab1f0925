import { reliefAboveTest, reliefBelowWeakest } from '../../reference/pressure-test';
import { relation } from '../relation';

/** The window for the relief on the nitrogen supply, Pa absolute: above the test, below the weakest part. */
export const reliefSetting = relation({
  name: 'relief-setting',
  title: 'Setting of the relief',
  group: 8,
  inputs: {
    test: { kind: 'pressure', title: 'pressure asked', from: 'the pressure in the step' },
    weakest: {
      kind: 'pressure',
      title: 'lowest rating in reach',
      from: '`rated` of the parts, `design-pressure` of the system',
    },
  },
  output: 'pressure',
  formula: 'from test + 5 psi to 96 % of the lowest rating (gauge)',
  validity: 'a relief valve on the outlet of the regulator',
  sources: [
    'ASHRAE 15 interim action 10.1.2: above the test pressure, below what would deform a part',
    reliefAboveTest.source,
    reliefBelowWeakest.source,
  ],
  confidence: 'practice',
  assumptions: ['the relief passes what the regulator passes'],
  examples: [
    {
      inputs: { test: '450 psig', weakest: '500 psig' },
      expect: '455..480 psig',
      tolerance: 1e-6,
      source: 'by hand: 450 + 5, 0.96 × 500',
    },
  ],
  compute: ({ test, weakest }, { say, atmosphere }) => {
    const low = test + reliefAboveTest.quantity.low;
    const high = atmosphere + reliefBelowWeakest.quantity.high * (weakest - atmosphere);
    const pressure = (one: number): string => say('pressure', one);
    if (low > high)
      return {
        refused: `No relief can be set between the test at ${pressure(test)} and the weakest part at ${pressure(weakest)}.`,
      };
    return {
      value: [low, high],
      workings: () => [
        `least = ${pressure(test)} + ${say('pressure-difference', reliefAboveTest.quantity.low)} = ${pressure(low)}`,
        `most = ${reliefBelowWeakest.quantity.high} × ${pressure(weakest)} = ${pressure(high)}`,
      ],
    };
  },
});
