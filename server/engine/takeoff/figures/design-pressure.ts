import { bubblePressure } from '../../properties';
import { designTemperatures, leastDesignPressure } from '../../reference/pressure-test';
import { standardAtmosphere } from '../../reference/table-units';
import { relation } from '../relation';

const sides: Readonly<Record<string, number>> = {
  low: designTemperatures.low,
  'high-air': designTemperatures.highAir,
  'high-water': designTemperatures.highWater,
};

/** Least design pressure of a side by its refrigerant, Pa absolute. */
export const designPressure = relation({
  name: 'design-pressure',
  title: 'Least design pressure of a side',
  group: 8,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    side: { kind: 'word', title: 'side', from: 'low, high-air or high-water' },
  },
  output: 'pressure',
  formula:
    'bubble pressure at 80 °F (low side), 122 °F (high side, air-cooled) or 104 °F (high side, water-cooled), at least 15 psig',
  validity: 'field-erected systems where the 1 % outdoor temperature gives no more',
  sources: [designTemperatures.source],
  confidence: 'memory',
  assumptions: ['the local 1 % dry bulb is not above 92 °F; where it is, 30 °F above it counts'],
  examples: [
    {
      inputs: { refrigerant: 'R-454B', side: 'high-air' },
      expect: '409 psig',
      tolerance: 2e-3,
      source: 'handbook 7.2',
    },
    { inputs: { refrigerant: 'R-22', side: 'low' }, expect: '144 psig', tolerance: 3e-3, source: 'handbook 7.2' },
    {
      inputs: { refrigerant: 'R-448A', side: 'high-water' },
      expect: '258 psig',
      tolerance: 3e-3,
      source: 'handbook 7.2',
    },
  ],
  compute: ({ refrigerant, side }, { say, atmosphere }) => {
    const temperature = sides[side];
    if (temperature === undefined)
      return { refused: `\`${side}\` is no side; low, high-air or high-water belongs here.` };
    const bubble = bubblePressure(refrigerant, temperature);
    if (bubble === null)
      return { refused: `The tables of ${refrigerant.name} do not reach ${say('temperature', temperature)}.` };
    // The pressure of the refrigerant is absolute; the floor of 15 psig is a gauge reading where the job is.
    const value = Math.max(bubble, leastDesignPressure - standardAtmosphere + atmosphere);
    return {
      value,
      workings: () => [
        `bubble pressure of ${refrigerant.name} at ${say('temperature', temperature)} = ${say('pressure', bubble)}`,
      ],
    };
  },
});
