import { leftByDrain } from '../../reference/oil-limits';
import { relation } from '../relation';

/** Share of old oil left after rounds of drain, fill and run. */
export const oilLeft = relation({
  name: 'oil-left',
  title: 'Old oil left after the rounds',
  group: 12,
  inputs: {
    leftByDrain: {
      kind: 'share',
      title: 'share that a drain leaves',
      from: '`leaving` of the `change-oil` step',
      default: leftByDrain,
      valid: [0, 1],
    },
    rounds: {
      kind: 'count',
      title: 'number of rounds',
      from: '`at least` and `at most` of the `repeat`',
      valid: [0, 100],
    },
  },
  output: 'share',
  formula: 'f = r^n',
  validity: 'the system runs between rounds long enough to mix',
  sources: ['dilution arithmetic', leftByDrain.source],
  confidence: 'computed',
  assumptions: ['full mixing', 'each round leaves the same share'],
  examples: [
    {
      inputs: { leftByDrain: '30 %', rounds: '3' },
      expect: '2.7 %',
      tolerance: 1e-6,
      source: 'handbook section 12, WE-29',
    },
    { inputs: { leftByDrain: '50 %', rounds: '5' }, expect: '3.125 %', tolerance: 1e-6, source: 'handbook 4.3' },
    { inputs: { leftByDrain: '20 %', rounds: '0' }, expect: '100 %', tolerance: 1e-9, source: 'limit: no round' },
  ],
  compute: ({ leftByDrain: left, rounds }, { say }) => ({
    value: left ** rounds,
    workings: () => [`(${say('share', left)})^${rounds} = ${say('share', left ** rounds)}`],
  }),
});
