import { relation } from '../relation';

/** Time from the first step to the last, s: work and waits, less what is done while something waits. */
export const criticalPath = relation({
  name: 'critical-path',
  title: 'Time from start to end',
  group: 18,
  inputs: {
    work: { kind: 'time', title: 'work', from: 'the steps' },
    waits: { kind: 'time', title: 'waits', from: '`for` in the steps' },
    meanwhile: { kind: 'time', title: 'work done meanwhile', from: 'the steps', optional: true },
  },
  output: 'time',
  formula: 't = work + waits - work done meanwhile',
  validity: 'steps in their order; only what does not touch the circuit is done while something waits',
  sources: ['critical path of a chain of steps'],
  confidence: 'computed',
  assumptions: ['nothing has to be done twice', 'the time between visits is not counted'],
  examples: [
    {
      inputs: { work: '120 min', waits: '60 min', meanwhile: '10 min' },
      expect: '170 min',
      tolerance: 1e-9,
      source: 'by hand',
    },
  ],
  compute: ({ work, waits, meanwhile = 0 }, { say }) => {
    const value = Math.max(0, work + waits - meanwhile);
    return {
      value,
      workings: () => [
        `${say('time', work)} + ${say('time', waits)} - ${say('time', meanwhile)} = ${say('time', value)}`,
      ],
    };
  },
});
