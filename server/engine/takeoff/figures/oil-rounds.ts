import { leftByDrain, oldOilAccepted } from '../../reference/oil-limits';
import { relation } from '../relation';

/** Rounds of drain, fill and run until the old oil is down to a share. */
export const oilRounds = relation({
  name: 'oil-rounds',
  title: 'Oil rounds needed',
  group: 12,
  inputs: {
    leftByDrain: {
      kind: 'share',
      title: 'share that a drain leaves',
      from: '`leaving` of the `change-oil` step',
      default: leftByDrain,
      valid: [0.001, 0.999],
    },
    target: {
      kind: 'share',
      title: 'old oil accepted',
      from: '`oil … left at most` of the house rules',
      default: oldOilAccepted,
      valid: [1e-6, 0.999],
    },
  },
  output: 'count',
  formula: 'n = ln(target) / ln(r), rounded up',
  validity: 'the system runs between rounds long enough to mix',
  sources: ['dilution arithmetic', oldOilAccepted.source],
  confidence: 'computed',
  assumptions: ['full mixing', 'each round leaves the same share'],
  examples: [
    { inputs: { leftByDrain: '30 %', target: '5 %' }, expect: '3', tolerance: 0, source: 'handbook section 12, WE-29' },
    { inputs: { leftByDrain: '50 %', target: '5 %' }, expect: '5', tolerance: 0, source: 'handbook section 12, WE-29' },
    { inputs: { leftByDrain: '20 %', target: '5 %' }, expect: '2', tolerance: 0, source: 'handbook section 12, WE-29' },
    { inputs: { leftByDrain: '40 %', target: '1 %' }, expect: '6', tolerance: 0, source: 'handbook 4.3' },
  ],
  compute: ({ leftByDrain: left, target }, { say }) => {
    const bare = Math.log(target) / Math.log(left);
    const value = Math.ceil(bare - 1e-9);
    return {
      value,
      workings: () => [`ln(${say('share', target)}) / ln(${say('share', left)}) = ${bare.toFixed(2)}, so ${value}`],
    };
  },
});
