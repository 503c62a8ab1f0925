import { shotTime } from '../../reference/flush-practice';
import { relation } from '../relation';

/** How long the solvent of a pass flows, s: the sum of its shots. */
export const flushTime = relation({
  name: 'flush-time',
  title: 'Flush time of a pass',
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
    least: {
      kind: 'time',
      title: 'least time of a shot',
      from: '`per` the solvent’s sheet',
      default: { ...shotTime, quantity: { kind: 'time', low: 30, high: 30 } },
    },
    most: {
      kind: 'time',
      title: 'most time of a shot',
      from: '`per` the solvent’s sheet',
      default: { ...shotTime, quantity: { kind: 'time', low: 90, high: 90 } },
    },
  },
  output: 'time',
  outputUnit: 's',
  formula: 't = max(least, V per pass / delivery rate); above the most it is split into shots of equal length',
  validity: 'solvent from a container at a steady rate',
  sources: [shotTime.source],
  confidence: 'practice',
  assumptions: ['the container delivers at its stated rate until it is empty'],
  examples: [
    {
      inputs: { perPass: '18 fl-oz', delivery: '18 fl-oz/min' },
      expect: '60 s',
      tolerance: 1e-6,
      source: 'by hand: one minute at the stated rate',
    },
    {
      inputs: { perPass: '8 fl-oz', delivery: '18 fl-oz/min' },
      expect: '30 s',
      tolerance: 1e-6,
      source: 'handbook 5.2, 30 to 90 s a line: by hand 26.7 s, raised to 30 s',
    },
    {
      inputs: { perPass: '36 fl-oz', delivery: '18 fl-oz/min' },
      expect: '120 s',
      tolerance: 1e-6,
      source: 'handbook 5.2, 30 to 90 s a line: by hand 120 s, so two shots',
    },
  ],
  compute: ({ perPass, delivery, least, most }, { say }) => {
    const flow = perPass / delivery;
    const shots = flushShots(flow, most);
    const value = Math.max(least, flow);
    const time = (seconds: number): string => say('time', seconds, 's');
    const notes =
      shots > 1
        ? [`More than ${time(most)} in one shot: split into ${shots} shots of ${time(value / shots)}.`]
        : flow < least
          ? [`The solvent is through in ${time(flow)}; ${time(least)} are taken so that the line is wetted.`]
          : [];
    return {
      value,
      notes,
      workings: () => [
        `flow = ${say('volume', perPass, 'fl-oz')} / ${say('volume-flow', delivery, 'fl-oz/min')} = ${time(flow)}`,
        ...(flow < least ? [`raised to the least of ${time(least)}`] : []),
        ...(shots > 1 ? [`${time(value)} / ${shots} shots = ${time(value / shots)} each`] : []),
      ],
    };
  },
});

/** Into how many shots of at most `most` seconds a flow of `seconds` is split. */
export const flushShots = (seconds: number, most: number): number => Math.max(1, Math.ceil(seconds / most - 1e-9));
