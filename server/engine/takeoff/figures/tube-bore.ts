import { inch } from '../../reference/table-units';
import { relation } from '../relation';

/** Bore of a tube, m. */
export const tubeBore = relation({
  name: 'tube-bore',
  title: 'Bore of a tube',
  group: 1,
  inputs: {
    outsideDiameter: {
      kind: 'length',
      as: 'in',
      title: 'outside diameter',
      from: '`tube` of the line',
      valid: [2e-3, 0.3],
    },
    wall: {
      kind: 'length',
      as: 'in',
      title: 'wall',
      from: '`wall` of the line, or a `tube` of a standard',
      valid: [0.2e-3, 10e-3],
    },
  },
  output: 'length',
  outputUnit: 'in',
  formula: 'bore = outside diameter - 2 × wall',
  validity: 'round tube of 2 to 300 mm outside diameter',
  sources: ['geometry; sizes by ASTM B280 or EN 12735-1'],
  confidence: 'published',
  assumptions: ['nominal wall, no wear'],
  examples: [
    {
      inputs: { outsideDiameter: '0.375 in', wall: '0.032 in' },
      expect: '0.311 in',
      tolerance: 1e-6,
      source: 'printed dimensions of ASTM B280 coil, 3/8 in',
    },
    {
      inputs: { outsideDiameter: '22 mm', wall: '1 mm' },
      expect: '20 mm',
      tolerance: 1e-6,
      source: 'EN 12735-1, 22 × 1',
    },
  ],
  compute: ({ outsideDiameter, wall }, { say }) => {
    const bore = outsideDiameter - 2 * wall;
    if (bore < 0.02 * inch) return { refused: 'The wall leaves no bore in a tube of this size.' };
    const length = (value: number): string => say('length', value, 'in');
    return {
      value: bore,
      workings: () => [`bore = ${length(outsideDiameter)} - 2 × ${length(wall)} = ${length(bore)}`],
    };
  },
});
