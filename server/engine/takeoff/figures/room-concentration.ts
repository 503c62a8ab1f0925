import { relation } from '../relation';

const room = {
  kind: 'volume',
  title: 'volume of the room',
  from: '`smallest-room` of the site',
  valid: [0.1, 1e7],
} as const;

/** Refrigerant in the air of a room if the whole charge leaks into it, kg/m3. */
export const roomConcentration = relation({
  name: 'room-concentration',
  title: 'Concentration if all leaks into the room',
  group: 14,
  inputs: { charge: { kind: 'mass', title: 'charge', from: '`charge` of the system' }, room },
  output: 'charge-per-volume',
  formula: 'charge / volume of the room',
  validity: 'closed room, mixed',
  sources: ['arithmetic'],
  confidence: 'computed',
  assumptions: ['the whole charge leaks at once and mixes'],
  examples: [
    {
      inputs: { charge: '6 lb', room: '1500 ft3' },
      expect: '4.0 lb/Mcf',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-38',
    },
    {
      inputs: { charge: '8 lb', room: '1500 ft3' },
      expect: '5.333 lb/Mcf',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-38',
    },
  ],
  compute: ({ charge, room: volume }, { say }) => ({
    value: charge / volume,
    workings: () => [
      `${say('mass', charge)} / ${say('volume', volume, 'ft3')} = ${say('charge-per-volume', charge / volume)}`,
    ],
  }),
});
