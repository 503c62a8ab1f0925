import { oilFilm as usualFilm } from '../../reference/flush-practice';
import { relation } from '../relation';

/** Oil that a blown-out, unflushed line keeps on its wall, m3. */
export const oilFilm = relation({
  name: 'oil-film',
  title: 'Old oil on the wall of a line',
  group: 12,
  inputs: {
    area: { kind: 'area', title: 'inside surface', from: '`tube` and `length` of the line' },
    film: {
      kind: 'length',
      as: 'mm',
      title: 'thickness of the film',
      from: 'nothing in the plan',
      default: usualFilm,
      valid: [0, 1e-3],
    },
  },
  output: 'volume',
  outputUnit: 'fl-oz',
  formula: 'V = inside surface × film',
  validity: 'lines blown out, no oil standing in traps',
  sources: [usualFilm.source],
  confidence: 'practice',
  assumptions: ['even film'],
  examples: [
    {
      inputs: { area: '0.955 m2', film: '0.1 mm' },
      expect: '95.5 mL',
      tolerance: 1e-3,
      source: 'handbook 4.3: 95 mL on 50 ft of 7/8',
    },
    {
      inputs: { area: '0.378 m2', film: '0.1 mm' },
      expect: '37.8 mL',
      tolerance: 1e-3,
      source: 'handbook 4.3: 38 mL on 50 ft of 3/8',
    },
  ],
  compute: ({ area, film }, { say }) => ({
    value: area * film,
    workings: () => [
      `${say('area', area, 'm2')} × ${say('length', film, 'mm')} = ${say('volume', area * film, 'L')} = ${say('volume', area * film, 'fl-oz')}`,
    ],
  }),
});
