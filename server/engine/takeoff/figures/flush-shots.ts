import { shotTime } from '../../reference/flush-practice';
import { relation } from '../relation';
import { flushShots as shotsOf } from './flush-time';

/** In how many shots the solvent of a pass goes in. */
export const flushShots = relation({
  name: 'flush-shots',
  title: 'Shots of a pass',
  group: 5,
  inputs: {
    perPass: { kind: 'volume', as: 'fl-oz', title: 'solvent of a pass', from: '`tube` and `length` of the line' },
    delivery: {
      kind: 'volume-flow',
      as: 'fl-oz/min',
      title: 'delivery rate',
      from: '`delivers` of the solvent',
      valid: [1e-7, 1e-2],
    },
    most: {
      kind: 'time',
      title: 'most time of a shot',
      from: '`per` the solvent’s sheet',
      default: { ...shotTime, quantity: { kind: 'time', low: 90, high: 90 } },
      valid: [1, 3600],
    },
  },
  output: 'count',
  formula: 'shots = V per pass / delivery rate / most time of a shot, rounded up',
  validity: 'solvent from a container at a steady rate',
  sources: [shotTime.source],
  confidence: 'practice',
  assumptions: ['shots of equal length'],
  examples: [
    {
      inputs: { perPass: '36 fl-oz', delivery: '18 fl-oz/min' },
      expect: '2',
      tolerance: 0,
      source: 'by hand: 120 s over at most 90 s',
    },
    {
      inputs: { perPass: '27 fl-oz', delivery: '18 fl-oz/min' },
      expect: '1',
      tolerance: 0,
      source: 'by hand: 90 s is still one shot',
    },
  ],
  compute: ({ perPass, delivery, most }, { say }) => {
    const value = shotsOf(perPass / delivery, most);
    return {
      value,
      workings: () => [
        `${say('volume', perPass, 'fl-oz')} / ${say('volume-flow', delivery, 'fl-oz/min')} / ${say('time', most, 's')} = ${(perPass / delivery / most).toFixed(2)}, so ${value}`,
      ],
    };
  },
});
