import { factsOf } from '../../reference/refrigerant-facts';
import { relation } from '../relation';

const refrigerant = {
  kind: 'refrigerant',
  title: 'refrigerant',
  from: '`refrigerant` of the system',
  byNameAlone: true,
} as const;
const room = {
  kind: 'volume',
  title: 'volume of the room',
  from: '`smallest-room` of the site',
  valid: [0.1, 1e7],
} as const;

/** Most refrigerant whose leak keeps a room under its concentration limit, kg. */
export const roomChargeLimit = relation({
  name: 'room-charge-limit',
  title: 'Most charge for the room by the concentration limit',
  group: 14,
  inputs: { refrigerant, room },
  output: 'mass',
  formula: 'm = refrigerant concentration limit × volume of the room',
  validity: 'refrigerants whose limit is in the table',
  sources: ['refrigerant concentration limits: mechanical code table 1103.1 and ASHRAE 34'],
  confidence: 'published',
  assumptions: ['the whole charge leaks at once and mixes'],
  examples: [
    {
      inputs: { refrigerant: 'R-32', room: '1500 ft3' },
      expect: '7.2 lb',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-38: limit 4.8 lb/Mcf',
    },
  ],
  compute: ({ refrigerant: gas, room: volume }, { say }) => {
    const facts = factsOf(gas.name);
    if (facts?.concentrationLimit == null)
      return { refused: `No concentration limit of ${gas.name} is in the tables.` };
    const { low } = facts.concentrationLimit;
    return {
      value: low * volume,
      confidence: facts.limitConfidence,
      workings: () => [
        `${say('charge-per-volume', low)} × ${say('volume', volume, 'ft3')} = ${say('mass', low * volume)}`,
      ],
    };
  },
});
