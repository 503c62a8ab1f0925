import { relation } from '../relation';

/** The charge that a system ends with, kg. */
export const totalCharge = relation({
  name: 'total-charge',
  title: 'Charge in all',
  group: 10,
  inputs: {
    plate: { kind: 'mass', title: 'charge on the plate', from: '`charge` of the system' },
    additions: { kind: 'mass', title: 'addition', from: '`length` of the liquid line', several: true, optional: true },
  },
  output: 'mass',
  formula: 'm = charge on the plate + additions for line, coil and drier',
  validity: 'systems charged by weight',
  sources: ['maker’s plate and the line allowance'],
  confidence: 'practice',
  assumptions: ['the plate’s charge is for the matched coil and the included length'],
  examples: [
    {
      inputs: { plate: '6 lb 2 oz', additions: ['16.5 oz', '2 oz'] },
      expect: '116.5 oz',
      tolerance: 1e-6,
      source: 'by hand: 98 + 16.5 + 2 oz',
    },
  ],
  compute: ({ plate, additions }, { say }) => {
    const value = additions.reduce((sum, one) => sum + one, plate);
    return {
      value,
      workings: () => [`${[plate, ...additions].map((one) => say('mass', one)).join(' + ')} = ${say('mass', value)}`],
    };
  },
});
