import { bubbleTemperature, dewTemperature, type Refrigerant } from '../../properties';
import { type Example, relation } from '../relation';

/** Superheat or subcooling that a pair of readings means, K: how far the line is from the curve on its side of it. */
const measured = (definition: {
  readonly name: string;
  readonly title: string;
  readonly formula: string;
  readonly curve: string;
  readonly saturated: (refrigerant: Refrigerant, pressure: number) => number | null;
  /** 1 where the line is warmer than the curve, -1 where it is colder. */
  readonly sign: 1 | -1;
  readonly examples: readonly Example[];
}) =>
  relation({
    name: definition.name,
    title: definition.title,
    group: 11,
    inputs: {
      refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
      pressure: { kind: 'pressure', title: 'pressure', from: 'the reading of the gauge' },
      temperature: { kind: 'temperature', title: 'line temperature', from: 'the reading of the thermometer' },
    },
    output: 'temperature-difference',
    formula: definition.formula,
    validity: 'within the range of the tables',
    sources: ['property tables of the refrigerant'],
    confidence: 'computed',
    assumptions: ['pressure read where the temperature is read'],
    examples: definition.examples,
    compute: ({ refrigerant, pressure, temperature }, { say }) => {
      const saturated = definition.saturated(refrigerant, pressure);
      if (saturated === null)
        return { refused: `The tables of ${refrigerant.name} do not reach ${say('pressure', pressure)}.` };
      const value = definition.sign * (temperature - saturated);
      const [from, less] = definition.sign === 1 ? [temperature, saturated] : [saturated, temperature];
      return {
        value,
        workings: () => [
          `${definition.curve} temperature of ${refrigerant.name} at ${say('pressure', pressure)} = ${say('temperature', saturated)}`,
          `${say('temperature', from)} - ${say('temperature', less)} = ${say('temperature-difference', value)}`,
        ],
      };
    },
  });

/** Less than nothing is flash gas or a wrong reading. */
export const measuredSubcooling = measured({
  name: 'measured-subcooling',
  title: 'Subcooling from the readings',
  formula: 'bubble temperature at the pressure - line temperature',
  curve: 'bubble',
  saturated: bubbleTemperature,
  sign: -1,
  examples: [
    {
      inputs: { refrigerant: 'R-410A', pressure: '341.9 psig', temperature: '95 degF' },
      expect: '10 Δ°F',
      tolerance: 0.02,
      source: 'by hand on handbook 3.5',
    },
  ],
});

/** Less than nothing is liquid in the suction line or a wrong reading. */
export const measuredSuperheat = measured({
  name: 'measured-superheat',
  title: 'Superheat from the readings',
  formula: 'line temperature - dew temperature at the pressure',
  curve: 'dew',
  saturated: dewTemperature,
  sign: 1,
  examples: [
    {
      inputs: { refrigerant: 'R-22', pressure: '68.6 psig', temperature: '50 degF' },
      expect: '10 Δ°F',
      tolerance: 0.02,
      source: 'by hand on handbook 3.5',
    },
  ],
});
