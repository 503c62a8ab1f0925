import { bubbleTemperature, dewTemperature, type Refrigerant } from '../../properties';
import { relation } from '../relation';

const atPressure = (
  name: string,
  title: string,
  what: string,
  lookup: (refrigerant: Refrigerant, pressure: number) => number | null,
  examples: readonly (readonly [refrigerant: string, pressure: string, expect: string, source: string])[],
) =>
  relation({
    name,
    title,
    group: 3,
    inputs: {
      refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
      pressure: { kind: 'pressure', title: 'pressure', from: 'the pressure read or asked' },
    },
    output: 'temperature',
    formula: `${what} by the property tables`,
    validity: 'within the range of the refrigerant’s tables; nothing is guessed beyond',
    sources: ['property tables of the refrigerant, fitted to reference equations of state and mixture models'],
    confidence: 'computed',
    assumptions: ['composition as charged; a leak changes it'],
    examples: examples.map(([refrigerant, pressure, expect, source]) => ({
      inputs: { refrigerant, pressure },
      expect,
      tolerance: 1e-3,
      source,
    })),
    compute: ({ refrigerant, pressure }, { say }) => {
      const value = lookup(refrigerant, pressure);
      if (value === null)
        return { refused: `The tables of ${refrigerant.name} do not reach ${say('pressure', pressure)}.` };
      return {
        value,
        workings: () => [
          `${what} of ${refrigerant.name} at ${say('pressure', pressure)} = ${say('temperature', value)}`,
        ],
      };
    },
  });

/** Judges subcooling: where the liquid would begin to boil. */
export const saturationBubbleTemperature = atPressure(
  'bubble-temperature',
  'Temperature of the bubble point',
  'bubble temperature',
  bubbleTemperature,
  [['R-410A', '341.9 psig', '105 degF', 'handbook 3.5']],
);

/** Judges superheat: where the vapour would begin to condense. */
export const saturationDewTemperature = atPressure(
  'dew-temperature',
  'Temperature of the dew point',
  'dew temperature',
  dewTemperature,
  [
    ['R-22', '68.6 psig', '40 degF', 'handbook WE-48'],
    ['R-448A', '71.2 psig', '40 degF', 'handbook 3.5'],
  ],
);
