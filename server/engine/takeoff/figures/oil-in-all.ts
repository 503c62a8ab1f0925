import { relation } from '../relation';

/** Oil that the job fills in, least to most rounds, m3. */
export const oilInAll = relation({
  name: 'oil-in-all',
  title: 'Oil to fill in',
  group: 16,
  inputs: {
    fills: {
      kind: 'volume',
      as: 'fl-oz',
      title: 'oil of a fill over its rounds',
      from: '`to` of the `change-oil` step',
      several: true,
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = sum of the fills, each as often as it is made',
  validity: 'what the plan says is filled',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['each fill is made whole'],
  examples: [
    { inputs: { fills: ['140 fl-oz', '280 fl-oz'] }, expect: '420 fl-oz', tolerance: 1e-9, source: 'by hand' },
  ],
  compute: ({ fills }, { say }) => {
    const value = fills.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [
        `${fills.map((one) => say('volume', one, 'fl-oz')).join(' + ')} = ${say('volume', value, 'fl-oz')}`,
      ],
    };
  },
});
