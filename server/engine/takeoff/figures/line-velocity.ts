import { relation } from '../relation';

/** Velocity in a line, m/s. */
export const lineVelocity = relation({
  name: 'line-velocity',
  title: 'Velocity in a line',
  group: 13,
  inputs: {
    flow: { kind: 'mass-flow', title: 'refrigerant flow', from: '`capacity` of the system or the line' },
    density: {
      kind: 'density',
      title: 'density',
      from: '`refrigerant` and temperatures of the system',
      valid: [1e-3, 3000],
    },
    bore: { kind: 'length', as: 'in', title: 'bore', from: '`tube` of the line', valid: [0.5e-3, 0.3] },
  },
  output: 'velocity',
  outputUnit: 'ft/min',
  formula: 'v = flow / (density × π/4 × bore²)',
  validity: 'one phase',
  sources: ['continuity'],
  confidence: 'computed',
  assumptions: ['even velocity over the bore'],
  examples: (
    [
      ['0.785 in', '1676 ft/min'],
      ['1.025 in', '983 ft/min'],
      ['0.680 in', '2233 ft/min'],
      ['0.666 in', '2328 ft/min'],
    ] as const
  ).map(([bore, expect]) => ({
    inputs: { flow: '8.32 lb/min', density: '1.477 lb/ft3', bore },
    expect,
    tolerance: 2e-3,
    source: 'handbook section 12, WE-26',
  })),
  compute: ({ flow, density, bore }, { say }) => {
    const area = (Math.PI / 4) * bore ** 2;
    const value = flow / (density * area);
    return {
      value,
      workings: () => [
        `area of bore = π/4 × (${say('length', bore, 'in')})² = ${say('area', area, 'in2')}`,
        `${say('mass-flow', flow)} / (${say('density', density)} × ${say('area', area, 'in2')}) = ${say('velocity', value, 'ft/min')}`,
      ],
    };
  },
});
