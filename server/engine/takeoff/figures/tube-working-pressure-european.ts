import { celsius } from '../../reference/table-units';
import { type EuropeanTemper, europeanStress, europeanStressSource } from '../../reference/tube-stress-european';
import { relation } from '../relation';

const tempers: readonly string[] = ['hard', 'half-hard', 'annealed'];

/** Working pressure of a copper tube by the European formula, Pa absolute (rated by gauge). */
export const tubeWorkingPressureEuropean = relation({
  name: 'tube-working-pressure-european',
  title: 'Working pressure of a tube by the European formula',
  group: 2,
  inputs: {
    outsideDiameter: {
      kind: 'length',
      as: 'mm',
      title: 'outside diameter',
      from: '`tube` of the line',
      valid: [2e-3, 0.3],
    },
    wall: {
      kind: 'length',
      as: 'mm',
      title: 'wall',
      from: '`wall` of the line, or a `tube` of a standard',
      valid: [0.2e-3, 10e-3],
    },
    temper: { kind: 'word', title: 'temper', from: '`joint` of the line', optional: true },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the tube',
      from: 'the design temperature of that side',
      valid: [220, celsius(200)],
    },
  },
  output: 'pressure',
  formula: 'p = 2 F t / (D - t), F = 46 N/mm² annealed, 60 half-hard, 72.5 hard at 65 °C (gauge)',
  validity: 'EN 12735-1 tube; hard and half-hard to 65 °C, annealed to 200 °C',
  sources: [europeanStressSource],
  confidence: 'published',
  assumptions: ['annealed wherever a torch was at the tube', 'nominal wall and diameter'],
  examples: (
    [
      ['22 mm', '1 mm', 'annealed', '65 degC', '43.8 bar gauge'],
      ['22 mm', '1 mm', 'hard', '65 degC', '69.0 bar gauge'],
      ['54 mm', '2 mm', 'annealed', '110 degC', '30.8 bar gauge'],
    ] as const
  ).map(([outsideDiameter, wall, temper, temperature, expect]) => ({
    inputs: { outsideDiameter, wall, temper, temperature },
    expect,
    tolerance: 3e-3,
    source: 'handbook section 12, WE-12, and its table 1.2, by the formula of the copper trade body',
  })),
  compute: ({ outsideDiameter, wall, temper = 'annealed', temperature }, { say, atmosphere }) => {
    if (!tempers.includes(temper))
      return { refused: `\`${temper}\` is no temper; annealed, half-hard or hard belongs here.` };
    const stress = europeanStress(temper as EuropeanTemper, temperature);
    if (stress === null)
      return { refused: `No stress of ${temper} tube is printed for ${say('temperature', temperature)}.` };
    if (outsideDiameter <= 2 * wall) return { refused: 'The wall leaves no bore in a tube of this size.' };
    const gauge = (2 * stress * wall) / (outsideDiameter - wall);
    const length = (one: number): string => say('length', one, 'mm');
    return {
      value: atmosphere + gauge,
      workings: () => [
        `2 × ${say('pressure-difference', stress)} × ${length(wall)} / (${length(outsideDiameter)} - ${length(wall)}) = ${say('pressure', atmosphere + gauge)}`,
      ],
    };
  },
});
