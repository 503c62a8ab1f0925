import { fixedSlope } from '../../reference/pressure-test';
import { psi } from '../../reference/table-units';
import { relation } from '../relation';

/** A difference that no gauge of a test shows is no disagreement, Pa. */
const worthTelling = 0.5 * psi;

/** What a tight section reads after its temperature has changed, Pa absolute. */
export const correctedTestReading = relation({
  name: 'corrected-test-reading',
  title: 'Reading of a tight section at another temperature',
  group: 8,
  inputs: {
    pressure: {
      kind: 'pressure',
      title: 'pressure at the start',
      from: 'the reading at the start of the test',
      valid: [0, 2000 * psi],
    },
    start: {
      kind: 'temperature',
      title: 'temperature at the start',
      from: 'the reading at the start of the test',
      valid: [220, 360],
    },
    end: {
      kind: 'temperature',
      title: 'temperature at the end',
      from: 'the reading at the end of the test',
      valid: [220, 360],
    },
  },
  output: 'pressure',
  formula: 'p₂ = p₁ × T₂ / T₁, absolute pressures and temperatures',
  validity: 'dry gas in a closed volume up to 2000 psig',
  sources: ['law of Gay-Lussac'],
  confidence: 'computed',
  assumptions: ['temperature of the gas (tube wall), not of the weather', 'volume unchanged'],
  examples: [
    {
      inputs: { pressure: '500 psig', start: '70 degF', end: '60 degF' },
      expect: '490.3 psig',
      tolerance: 1e-4,
      source: 'handbook 7.3, 0.97 psi for each °F at 500 psig; by hand: 514.696 × 519.67 / 529.67 - 14.696',
    },
    {
      inputs: { pressure: '300 psig', start: '70 degF', end: '90 degF' },
      expect: '311.9 psig',
      tolerance: 1e-4,
      source: 'handbook 7.3, 0.59 psi for each °F at 300 psig; by hand: 314.696 × 549.67 / 529.67 - 14.696',
    },
    {
      inputs: { pressure: '450 psig', start: '81 degF', end: '81 degF' },
      expect: '450 psig',
      tolerance: 1e-9,
      source: 'limit: no change',
    },
  ],
  compute: ({ pressure, start, end }, { say, absolute }) => {
    const value = (pressure * end) / start;
    const byRule = pressure + fixedSlope.value * (end - start);
    return {
      value,
      notes:
        Math.abs(byRule - value) > worthTelling
          ? [
              `The fixed 0.3 psi for each °F of the federal guide specification would give ${say('pressure', byRule)}; it is right only near 150 psig.`,
            ]
          : [],
      workings: () => [
        `${say('pressure', pressure, 'psia')} × ${absolute(end)} / ${absolute(start)} = ${say('pressure', value, 'psia')} = ${say('pressure', value)}`,
      ],
    };
  },
});
