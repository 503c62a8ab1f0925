import { relation } from '../relation';

const gravity = 9.80665;

/** Pressure that a column of liquid takes on its way up, Pa. */
export const staticHead = relation({
  name: 'static-head',
  title: 'Pressure of the liquid column',
  group: 13,
  inputs: {
    density: {
      kind: 'density',
      title: 'density of the liquid',
      from: '`refrigerant` and `condensing` of the system',
      valid: [0.1, 3000],
    },
    rise: { kind: 'length', title: 'rise', from: '`rise` of the liquid line', valid: [-500, 500] },
  },
  output: 'pressure-difference',
  formula: 'Δp = ρ g × rise',
  validity: 'lines full of liquid',
  sources: ['hydrostatics'],
  confidence: 'computed',
  assumptions: ['one density over the height'],
  examples: [
    {
      inputs: { density: '1129 kg/m3', rise: '1 ft' },
      expect: '0.489 psi',
      tolerance: 5e-3,
      source: 'handbook 10.2: R-22 0.49 psi/ft at 100 °F',
    },
    {
      inputs: { density: '997 kg/m3', rise: '1 ft' },
      expect: '0.4324 psi',
      tolerance: 2e-3,
      source: 'text-book: 0.433 psi per ft of water',
    },
  ],
  compute: ({ density, rise }, { say, system }) => ({
    value: density * gravity * rise,
    workings: () => [
      `${say('density', density)} × ${system === 'si' ? `9.807 m/s² × ${say('length', rise)}` : `${say('length', rise, 'ft')} / 144`} = ${say('pressure-difference', density * gravity * rise)}`,
    ],
  }),
});
