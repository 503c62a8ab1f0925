import { liquidDensity } from '../../properties';
import { receiverFill } from '../../reference/charging';
import { relation } from '../relation';

/** What a receiver can hold when the system is pumped down, kg. */
export const receiverCapacity = relation({
  name: 'receiver-capacity',
  title: 'What the receiver holds in a pump-down',
  group: 10,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    volume: { kind: 'volume', as: 'ft3', title: 'volume of the receiver', from: '`volume` of the receiver' },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the liquid',
      from: '`condensing` of the system, `outdoors` of the site',
    },
    charge: { kind: 'mass', title: 'charge to be held', from: '`recover-charge` of the system', optional: true },
    fill: {
      kind: 'share',
      title: 'fill',
      from: 'the maker’s sheet of the receiver',
      default: receiverFill,
      valid: [0.05, 1],
    },
  },
  output: 'mass',
  formula: 'm = volume × fill × liquid density',
  validity: 'receivers at one temperature',
  sources: [receiverFill.source, 'density from the property tables'],
  confidence: 'practice',
  assumptions: ['the receiver is empty before'],
  examples: [
    {
      inputs: { refrigerant: 'R-22', volume: '1 ft3', temperature: '77 degF', fill: '80 %' },
      expect: '59.5 lb',
      tolerance: 3e-3,
      source: 'by hand on handbook 3.5: 1191 kg/m³ × 0.02832 m³ × 0.8 = 26.98 kg',
    },
  ],
  compute: ({ refrigerant, volume, temperature, fill, charge }, { say }) => {
    const density = liquidDensity(refrigerant, temperature);
    if (density === null)
      return {
        refused: `The tables of ${refrigerant.name} give no liquid density at ${say('temperature', temperature)}.`,
      };
    const value = volume * fill * density;
    return {
      value,
      notes:
        charge !== undefined && charge > value
          ? [`The charge of ${say('mass', charge)} is more than it holds: what does not go in is recovered.`]
          : [],
      workings: () => [
        `${say('volume', volume, 'ft3')} × ${say('share', fill)} × ${say('density', density)} = ${say('mass', value)}`,
      ],
    };
  },
});
