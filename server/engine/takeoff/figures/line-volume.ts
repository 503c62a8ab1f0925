import { relation } from '../relation';

/** Inside volume of a length of tube, m3. */
export const lineVolume = relation({
  name: 'line-volume',
  title: 'Inside volume of a line',
  group: 1,
  inputs: {
    bore: { kind: 'length', as: 'in', title: 'bore', from: '`tube` of the line', valid: [0.5e-3, 0.3] },
    length: { kind: 'length', title: 'length', from: '`length` of the line', valid: [0, 2000] },
  },
  output: 'volume',
  formula: 'V = π/4 × bore² × length',
  validity: 'round tube of one bore, 0.5 to 300 mm',
  sources: ['geometry; bore by ASTM B280 or EN 12735-1'],
  confidence: 'published',
  assumptions: ['fittings count as tube of their own length'],
  examples: [
    {
      inputs: { bore: '0.311 in', length: '50 ft' },
      expect: '0.747 L',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-30',
    },
    {
      inputs: { bore: '0.785 in', length: '50 ft' },
      expect: '4.759 L',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-30',
    },
    {
      inputs: { bore: '1.265 in', length: '100 ft' },
      expect: '6.529 gal',
      tolerance: 1e-3,
      source: 'handbook 1.1, volume from the bore area of ASTM B280',
    },
    {
      inputs: { bore: '20 mm', length: '1 m' },
      expect: '0.3142 L',
      tolerance: 1e-3,
      source: 'handbook 1.2, EN 12735-1 22 × 1',
    },
  ],
  compute: ({ bore, length }, { say }) => {
    const area = (Math.PI / 4) * bore ** 2;
    return {
      value: area * length,
      workings: () => [
        `area of bore = π/4 × (${say('length', bore, 'in')})² = ${say('area', area, 'in2')}`,
        `volume = ${say('area', area, 'in2')} × ${say('length', length)} = ${say('volume', area * length, 'ft3')} = ${say('volume', area * length, 'L')}`,
      ],
    };
  },
});
