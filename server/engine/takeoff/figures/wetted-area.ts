import { relation } from '../relation';

/** Inside surface of a length of tube, m2: what a film of oil or solvent lies on. */
export const wettedArea = relation({
  name: 'wetted-area',
  title: 'Inside surface of a line',
  group: 1,
  inputs: {
    bore: { kind: 'length', as: 'in', title: 'bore', from: '`tube` of the line', valid: [0.5e-3, 0.3] },
    length: { kind: 'length', title: 'length', from: '`length` of the line', valid: [0, 2000] },
  },
  output: 'area',
  formula: 'A = π × bore × length',
  validity: 'round tube of one bore, 0.5 to 300 mm',
  sources: ['geometry'],
  confidence: 'published',
  assumptions: ['smooth wall'],
  examples: [
    { inputs: { bore: '0.785 in', length: '50 ft' }, expect: '0.955 m2', tolerance: 1e-3, source: 'handbook 4.3' },
    { inputs: { bore: '0.311 in', length: '50 ft' }, expect: '0.378 m2', tolerance: 1e-3, source: 'handbook 4.3' },
  ],
  compute: ({ bore, length }, { say }) => ({
    value: Math.PI * bore * length,
    workings: () => [
      `surface = π × ${say('length', bore, 'in')} × ${say('length', length)} = ${say('area', Math.PI * bore * length)}`,
    ],
  }),
});
