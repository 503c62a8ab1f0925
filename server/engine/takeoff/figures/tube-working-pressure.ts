import { allowableStress, hottestTube, tubeStressSource } from '../../reference/tube-stress';
import { relation } from '../relation';

/** Working pressure of a copper tube at a temperature, Pa absolute (rated by gauge). */
export const tubeWorkingPressure = relation({
  name: 'tube-working-pressure',
  title: 'Working pressure of a copper tube',
  group: 2,
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
    diameterTolerance: {
      kind: 'length',
      as: 'in',
      title: 'tolerance of the diameter',
      from: 'a `tube` of a standard',
      optional: true,
      valid: [0, 2e-3],
    },
    wallTolerance: {
      kind: 'length',
      as: 'in',
      title: 'tolerance of the wall',
      from: 'a `tube` of a standard',
      optional: true,
      valid: [0, 2e-3],
    },
    temper: { kind: 'word', title: 'temper', from: '`joint` of the line', optional: true },
    temperature: {
      kind: 'temperature',
      title: 'temperature of the tube',
      from: 'the design temperature of that side',
      valid: [220, hottestTube],
    },
  },
  output: 'pressure',
  formula: 'p = 2 S t / (D - 0.8 t), t the least wall, D the greatest outside diameter (gauge)',
  validity: 'copper tube up to 400 °F; the joint may be weaker',
  sources: ['ASME B31 formula as printed by the copper trade body', tubeStressSource],
  confidence: 'published',
  assumptions: ['annealed stress wherever a torch was at the tube', 'no corrosion allowance'],
  examples: [
    ...(
      [
        ['100 degF', '570 psig'],
        ['150 degF', '485 psig'],
        ['200 degF', '466 psig'],
        ['250 degF', '456 psig'],
        ['300 degF', '447 psig'],
        ['350 degF', '380 psig'],
        ['400 degF', '285 psig'],
      ] as const
    ).map(([temperature, expect]) => ({
      inputs: { outsideDiameter: '0.5025 in', wall: '0.023 in', temper: 'annealed', temperature },
      expect,
      tolerance: 2.5e-3,
      source: 'handbook WE-06: copper tube handbook table 3c, type M 3/8',
    })),
    ...(
      [
        ['100 degF', '982 psig'],
        ['250 degF', '982 psig'],
        ['300 degF', '953 psig'],
        ['350 degF', '925 psig'],
        ['400 degF', '896 psig'],
      ] as const
    ).map(([temperature, expect]) => ({
      inputs: { outsideDiameter: '0.501 in', wall: '0.023 in', temper: 'drawn', temperature },
      expect,
      tolerance: 2e-3,
      source: 'handbook WE-07: copper tube handbook, drawn',
    })),
    ...(
      [
        ['0.125 in', '0.030 in', '0.002 in', '0.003 in', '2613 psig'],
        ['0.250 in', '0.030 in', '0.002 in', '0.003 in', '1195 psig'],
        ['0.375 in', '0.032 in', '0.002 in', '0.003 in', '836 psig'],
        ['0.500 in', '0.032 in', '0.002 in', '0.003 in', '618 psig'],
        ['0.625 in', '0.035 in', '0.002 in', '0.004 in', '525 psig'],
        ['0.750 in', '0.035 in', '0.002 in', '0.004 in', '435 psig'],
        ['0.875 in', '0.045 in', '0.003 in', '0.004 in', '495 psig'],
        ['1.125 in', '0.050 in', '0.0035 in', '0.005 in', '420 psig'],
        ['1.375 in', '0.055 in', '0.004 in', '0.006 in', '373 psig'],
        ['1.625 in', '0.060 in', '0.0045 in', '0.006 in', '347 psig'],
      ] as const
    ).map(([outsideDiameter, wall, diameterTolerance, wallTolerance, expect]) => ({
      inputs: { outsideDiameter, wall, diameterTolerance, wallTolerance, temperature: '150 degF' },
      expect,
      tolerance: 2e-3,
      source: 'handbook WE-08: printed sheet of ASTM B280 coil at 150 °F',
    })),
  ],
  compute: (
    { outsideDiameter, wall, diameterTolerance, wallTolerance, temper = 'annealed', temperature },
    { say, atmosphere },
  ) => {
    if (temper !== 'annealed' && temper !== 'drawn')
      return { refused: `\`${temper}\` is no temper; annealed or drawn belongs here.` };
    const stress = allowableStress(temper, temperature);
    if (stress === null) return { refused: `No stress is printed for ${say('temperature', temperature)}.` };
    const thin = wall - (wallTolerance ?? 0);
    const wide = outsideDiameter + (diameterTolerance ?? 0);
    if (thin <= 0 || wide <= 2 * thin) return { refused: 'The wall and its tolerance leave no tube of this size.' };
    const gauge = (2 * stress * thin) / (wide - 0.8 * thin);
    const length = (one: number): string => say('length', one, 'in');
    return {
      value: atmosphere + gauge,
      notes:
        wallTolerance === undefined
          ? ['Nominal wall: the tolerance of this tube is not in the tables, and printed ratings are 10 to 18 % lower.']
          : [],
      workings: () => [
        `stress, ${temper}, at ${say('temperature', temperature)} = ${say('pressure-difference', stress)}`,
        `2 × ${say('pressure-difference', stress)} × ${length(thin)} / (${length(wide)} - 0.8 × ${length(thin)}) = ${say('pressure', atmosphere + gauge)}`,
      ],
    };
  },
});
