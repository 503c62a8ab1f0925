import { relation } from '../relation';

/** Time that going back after failed tests adds, s: nothing if all pass, all rounds that the plan allows at the most. */
export const goingBack = relation({
  name: 'going-back',
  title: 'Added where tests fail',
  group: 18,
  inputs: {
    ways: { kind: 'time', title: 'way back', from: '`if-fails` of the steps', several: true, optional: true },
  },
  output: 'time',
  formula: 't = sum over the ways back of the time from its label to the failed step, as often as the plan allows',
  validity: 'ways back of which each is gone as often as it may be',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: [
    'a round takes as long as the steps take the first time',
    'finding and mending the fault is not counted',
  ],
  examples: [
    { inputs: { ways: ['0..60 min', '0..3 h'] }, expect: '0..4 h', tolerance: 1e-9, source: 'by hand' },
    { inputs: { ways: [] }, expect: '0 min', tolerance: 1e-9, source: 'limit: nothing fails' },
  ],
  compute: ({ ways }, { say }) => {
    const value = ways.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [`${ways.map((one) => say('time', one)).join(' + ') || say('time', 0)} = ${say('time', value)}`],
    };
  },
});
