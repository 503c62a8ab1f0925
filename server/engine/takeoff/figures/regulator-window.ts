import { reliefAboveTest, reliefBelowWeakest } from '../../reference/pressure-test';
import { relation } from '../relation';

/** Where the relief of the regulator in hand is set for a test, Pa absolute; refused where it cannot be. */
export const regulatorWindow = relation({
  name: 'regulator-window',
  title: 'Setting of this regulator’s relief',
  group: 8,
  inputs: {
    test: { kind: 'pressure', title: 'pressure asked', from: 'the pressure in the step' },
    weakest: {
      kind: 'pressure',
      title: 'lowest rating in reach',
      from: '`rated` of the parts, `design-pressure` of the system',
    },
    outlet: { kind: 'pressure', title: 'highest outlet of the regulator', from: '`outlet` of the regulator' },
    lowestRelief: { kind: 'pressure', title: 'lowest setting of its relief', from: '`relief` of the regulator' },
    highestRelief: { kind: 'pressure', title: 'highest setting of its relief', from: '`relief` of the regulator' },
  },
  output: 'pressure',
  formula:
    'from the higher of test + 5 psi and the lowest setting, to the lower of 96 % of the lowest rating and the highest setting (gauge)',
  validity: 'a regulator whose relief stands on its outlet',
  sources: [
    'ASHRAE 15 interim action 10.1.2: above the test pressure, below what would deform a part',
    reliefAboveTest.source,
    reliefBelowWeakest.source,
  ],
  confidence: 'practice',
  assumptions: ['the relief passes what the regulator passes'],
  examples: [
    {
      inputs: {
        test: '450 psig',
        weakest: '500 psig',
        outlet: '800 psig',
        lowestRelief: '100 psig',
        highestRelief: '650 psig',
      },
      expect: '455..480 psig',
      tolerance: 1e-6,
      source: 'by hand: the relief’s range does not bind; 450 + 5, 0.96 × 500',
    },
    {
      inputs: {
        test: '450 psig',
        weakest: '700 psig',
        outlet: '800 psig',
        lowestRelief: '500 psig',
        highestRelief: '650 psig',
      },
      expect: '500..650 psig',
      tolerance: 1e-6,
      source: 'by hand: 450 + 5 is under 500, 0.96 × 700 = 672 is over 650',
    },
  ],
  compute: ({ test, weakest, outlet, lowestRelief, highestRelief }, { say, atmosphere }) => {
    const pressure = (one: number): string => say('pressure', one);
    if (outlet < test)
      return { refused: `The regulator gives ${pressure(outlet)} at the most, under ${pressure(test)}.` };
    const low = Math.max(test + reliefAboveTest.quantity.low, lowestRelief);
    const high = Math.min(atmosphere + reliefBelowWeakest.quantity.high * (weakest - atmosphere), highestRelief);
    if (low > high)
      return {
        refused: `This relief cannot be set between the test at ${pressure(test)} and the weakest part at ${pressure(weakest)}.`,
      };
    return {
      value: [low, high],
      workings: () => [
        `least: the higher of ${pressure(test)} + ${say('pressure-difference', reliefAboveTest.quantity.low)} and ${pressure(lowestRelief)} = ${pressure(low)}`,
        `most: the lower of ${reliefBelowWeakest.quantity.high} × ${pressure(weakest)} and ${pressure(highestRelief)} = ${pressure(high)}`,
      ],
    };
  },
});
