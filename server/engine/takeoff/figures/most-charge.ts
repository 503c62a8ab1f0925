import { conversionMost } from '../../reference/charging';
import { relation } from '../relation';

/** The charge beyond which a conversion is not trimmed without a look at the cause, kg. */
export const mostCharge = relation({
  name: 'most-charge',
  title: 'Most charge of a conversion',
  group: 10,
  inputs: {
    oldCharge: { kind: 'mass', title: 'old charge', from: '`recover-charge` of the system' },
    most: {
      kind: 'share',
      title: 'most share of the old charge',
      from: '`at most` in the `adjust` step',
      default: conversionMost,
      valid: [0.5, 2],
    },
  },
  output: 'mass',
  formula: 'm = old charge × 110 %',
  validity: 'conversions of the same equipment',
  sources: [conversionMost.source],
  confidence: 'memory',
  assumptions: ['the old charge was right'],
  examples: [
    {
      inputs: { oldCharge: '95 lb' },
      expect: '104.5 lb',
      tolerance: 1e-6,
      source: 'handbook 9.3, trimmed to at most 110 %: 1.1 × 95',
    },
  ],
  compute: ({ oldCharge, most }, { say }) => ({
    value: oldCharge * most,
    workings: () => [`${say('mass', oldCharge)} × ${say('share', most)} = ${say('mass', oldCharge * most)}`],
  }),
});
