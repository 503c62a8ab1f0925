import { relation } from '../relation';

/** Hours of people, s: all of the crew from start to end, long waits left out. */
export const crewTime = relation({
  name: 'crew-time',
  title: 'Time of the crew',
  group: 18,
  inputs: {
    onSite: { kind: 'time', title: 'time on site', from: 'the steps' },
    people: { kind: 'count', title: 'people', from: '`crew` of the plan', valid: [1, 100] },
  },
  output: 'time',
  outputUnit: 'h',
  formula: 't = time on site × people',
  validity: 'a crew that comes and goes together',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['travel is not counted', 'nobody stays through a wait of four hours or more'],
  examples: [{ inputs: { onSite: '6 h', people: '2' }, expect: '12 h', tolerance: 1e-9, source: 'by hand' }],
  compute: ({ onSite, people }, { say }) => {
    const value = onSite * people;
    return { value, workings: () => [`${say('time', onSite)} × ${people} = ${say('time', value)}`] };
  },
});
