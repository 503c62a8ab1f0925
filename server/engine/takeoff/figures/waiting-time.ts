import { relation } from '../relation';

/** Time in which pump, test or heater works and nobody needs to, s. */
export const waitingTime = relation({
  name: 'waiting-time',
  title: 'Waiting',
  group: 18,
  inputs: {
    waits: { kind: 'time', title: 'wait of a step', from: '`for` in the steps', several: true, optional: true },
  },
  output: 'time',
  formula: 't = sum of the waits',
  validity: 'waits that the steps state, and the pump’s time',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['each wait is kept to its end'],
  examples: [{ inputs: { waits: ['30 min', '30..60 min'] }, expect: '60..90 min', tolerance: 1e-9, source: 'by hand' }],
  compute: ({ waits }, { say }) => {
    const value = waits.reduce((sum, one) => sum + one, 0);
    return {
      value,
      workings: () => [`${waits.map((one) => say('time', one)).join(' + ') || say('time', 0)} = ${say('time', value)}`],
    };
  },
});
