import { liquidDensity } from '../../properties';
import { firstChargeShare } from '../../reference/charging';
import { firstChargeConfidence, firstChargeRange, firstChargeSource } from '../../reference/first-charge';
import { guidelineFillTemperature } from '../../reference/recovery-cylinders';
import { relation } from '../relation';

/** How far the heuristic by density may be off either way: the width of the printed ranges. */
const spread = 0.05;

/** First charge of a conversion as a range, kg. */
export const firstCharge = relation({
  name: 'first-charge',
  title: 'First charge of a conversion',
  group: 10,
  inputs: {
    oldCharge: { kind: 'mass', title: 'old charge', from: '`recover-charge` of the system' },
    from: { kind: 'refrigerant', title: 'old refrigerant', from: '`refrigerant` of the system' },
    to: { kind: 'refrigerant', title: 'new refrigerant', from: '`refrigerant` of the system' },
  },
  output: 'mass',
  formula: 'old charge × the printed range for the pair; else × 0.9 × ratio of liquid densities at 77 °F, within 5 %',
  validity: 'the same equipment; a starting value to be trimmed by superheat, subcooling or sight glass',
  sources: [firstChargeSource, firstChargeShare.source],
  confidence: firstChargeConfidence,
  assumptions: ['the old charge was right'],
  examples: [
    {
      inputs: { oldCharge: '100 lb', from: 'R-22', to: 'R-407C' },
      expect: '85..95 lb',
      tolerance: 1e-6,
      source: 'handbook 9.3, table of first charges',
    },
    {
      inputs: { oldCharge: '95 lb', from: 'R-22', to: 'R-448A' },
      expect: '80.75..90.25 lb',
      tolerance: 1e-6,
      source: 'handbook 9.3: 85 to 95 %',
    },
    {
      inputs: { oldCharge: '100 lb', from: 'R-22', to: 'R-407F' },
      expect: '79.8..88.2 lb',
      tolerance: 0.05,
      source: 'by hand: 0.9 × about 0.93, density of R-407F near that of R-407C',
    },
  ],
  compute: ({ oldCharge, from, to }, { say }) => {
    const printed = firstChargeRange(from.name, to.name);
    if (printed !== undefined)
      return {
        value: [printed.low * oldCharge, printed.high * oldCharge],
        withoutTables: true,
        workings: () => [
          `${say('share', printed.low)} to ${say('share', printed.high)} of ${say('mass', oldCharge)} = ${say('mass', printed.low * oldCharge)} to ${say('mass', printed.high * oldCharge)}`,
        ],
      };
    const before = liquidDensity(from, guidelineFillTemperature);
    const after = liquidDensity(to, guidelineFillTemperature);
    if (before === null || after === null) return { refused: 'One of the two is no liquid at 77 °F.' };
    const middle = firstChargeShare.quantity.low * (after / before) * oldCharge;
    return {
      value: [middle * (1 - spread), middle * (1 + spread)],
      confidence: 'practice',
      notes: ['No printed range for this pair: estimated from the densities of the liquids.'],
      workings: () => [
        `0.9 × ${say('density', after)} / ${say('density', before)} × ${say('mass', oldCharge)} = ${say('mass', middle)}, within 5 %`,
      ],
    };
  },
});
