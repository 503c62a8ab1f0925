import { relation } from '../relation';

/** Time that steps take one after the other, s. */
export const workingTime = relation({
  name: 'working-time',
  title: 'Time of the steps',
  group: 18,
  inputs: { steps: { kind: 'time', title: 'time of a step', from: 'the times in the steps', several: true } },
  output: 'time',
  outputUnit: 'h',
  formula: 't = sum of the steps',
  validity: 'steps that follow one another',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['no two steps at once'],
  examples: [
    { inputs: { steps: ['30 min', '15..20 min', '1 h'] }, expect: '105..110 min', tolerance: 1e-9, source: 'by hand' },
  ],
  compute: ({ steps }, { say }) => {
    const value = steps.reduce((sum, one) => sum + one, 0);
    return { value, workings: () => [`${steps.map((one) => say('time', one)).join(' + ')} = ${say('time', value)}`] };
  },
});
