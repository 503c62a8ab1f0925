import { copperDensity } from '../../reference/tube-stress';
import { relation } from '../relation';

/** Mass of a length of copper tube, kg. */
export const tubeMass = relation({
  name: 'tube-mass',
  title: 'Weight of a copper line',
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
    length: { kind: 'length', title: 'length', from: '`length` of the line', valid: [0, 2000] },
  },
  output: 'mass',
  formula: 'm = π × (outside diameter - wall) × wall × length × 0.323 lb/in³',
  validity: 'bare copper tube',
  sources: ['ASTM B280-20 table 1: the printed weights follow from 0.323 lb/in³'],
  confidence: 'published',
  assumptions: ['bare tube without insulation'],
  examples: (
    [
      ['0.375 in', '0.030 in', '0.126 lb', 4e-3],
      ['0.5 in', '0.035 in', '0.198 lb', 3e-3],
      ['0.625 in', '0.040 in', '0.285 lb', 2e-3],
      ['0.875 in', '0.045 in', '0.455 lb', 2e-3],
      ['1.125 in', '0.050 in', '0.655 lb', 1e-3],
      ['2.125 in', '0.070 in', '1.75 lb', 3e-3],
    ] as const
  ).map(([outsideDiameter, wall, expect, tolerance]) => ({
    inputs: { outsideDiameter, wall, length: '1 ft' },
    expect,
    tolerance,
    source: 'handbook section 12, WE-10: printed weights of ASTM B280-20 table 1',
  })),
  compute: ({ outsideDiameter, wall, length }, { say }) => {
    const perLength = Math.PI * (outsideDiameter - wall) * wall * copperDensity;
    if (outsideDiameter <= 2 * wall) return { refused: 'The wall leaves no bore in a tube of this size.' };
    return {
      value: perLength * length,
      workings: () => [
        `weight per length = π × (${say('length', outsideDiameter, 'in')} - ${say('length', wall, 'in')}) × ${say('length', wall, 'in')} × ${say('density', copperDensity)} = ${say('mass-per-length', perLength, 'lb/ft')}`,
        `weight = ${say('mass-per-length', perLength, 'lb/ft')} × ${say('length', length)} = ${say('mass', perLength * length)}`,
      ],
    };
  },
});
