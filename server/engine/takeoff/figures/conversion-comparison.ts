import { bubblePressure, dewPressure, type Refrigerant } from '../../properties';
import { type Duty, dutyOf, type Working, workingAssumption, workingInputs } from '../cycle';
import { type Example, relation } from '../relation';
import type { Context } from '../spec';

const inputs = {
  from: { kind: 'refrigerant', title: 'old refrigerant', from: '`refrigerant` of the system' },
  to: { kind: 'refrigerant', title: 'new refrigerant', from: '`refrigerant` of the system' },
  ...workingInputs,
} as const;

const work = { evaporating: '40 degF', superheat: '10 Δ°F', condensing: '105 degF', subcooling: '10 Δ°F' };

/** New over old of something that a kilogram does, at the same duty and temperatures. */
const comparison = (
  name: string,
  title: string,
  formula: string,
  ratio: (before: Duty, after: Duty) => number,
  /** What of a refrigerant goes into it, with numbers. */
  terms: (duty: Duty, say: Context['say']) => string,
  examples: readonly Example[],
) =>
  relation({
    name,
    title,
    group: 15,
    inputs,
    output: 'count',
    outputDigits: 3,
    formula,
    validity: 'the same capacity and temperatures, within the range of both tables',
    sources: ['energy balance; enthalpies and densities from the property tables'],
    confidence: 'computed',
    assumptions: [workingAssumption],
    examples,
    compute: ({ from, to, ...working }: { from: Refrigerant; to: Refrigerant } & Working, { say }) => {
      const before = dutyOf(from, working);
      const after = dutyOf(to, working);
      if (before === null || after === null)
        return { refused: `The tables of ${before === null ? from.name : to.name} do not reach these temperatures.` };
      const value = ratio(before, after);
      return {
        value,
        workings: () => [
          ...[from, to].map((gas, k) => `${gas.name}: ${terms(k === 0 ? before : after, say)}`),
          `${to.name} over ${from.name}: ${value.toFixed(3)}`,
        ],
      };
    },
  });

const same: Example = {
  inputs: { from: 'R-22', to: 'R-22', ...work },
  expect: '1',
  tolerance: 1e-9,
  source: 'limit: the same refrigerant',
};

/** How much more refrigerant by weight flows after a conversion. */
export const massFlowRatio = comparison(
  'mass-flow-ratio',
  'Flow by weight, new over old',
  'effect of a kilogram, old / new',
  (before, after) => before.effect / after.effect,
  (duty, say) => `effect ${say('enthalpy', duty.effect, 'Btu/lb')}`,
  [
    same,
    {
      inputs: { from: 'R-22', to: 'R-134a', ...work },
      expect: '1.076',
      tolerance: 0.03,
      source: 'by hand: effects of 72.1 (handbook WE-26) over about 67 Btu/lb (printed tables of R-134a, from memory)',
    },
  ],
);

/** How much more vapour by volume the compressor must take in after a conversion. */
export const suctionVolumeRatio = comparison(
  'suction-volume-ratio',
  'Suction volume, new over old',
  '(effect × suction density), old / new',
  (before, after) => (before.effect * before.suctionDensity) / (after.effect * after.suctionDensity),
  (duty, say) =>
    `effect ${say('enthalpy', duty.effect, 'Btu/lb')}, suction density ${say('density', duty.suctionDensity)}`,
  [
    same,
    {
      inputs: { from: 'R-22', to: 'R-410A', ...work },
      expect: '0.69',
      tolerance: 0.04,
      source: 'trade text: R-410A has about 1.4 to 1.5 times the capacity of R-22 by volume, from memory',
    },
  ],
);

/** How the pressure ratio changes: the two temperatures alone count. */
export const pressureRatioChange = relation({
  name: 'pressure-ratio-change',
  title: 'Pressure ratio, new over old',
  group: 15,
  inputs: {
    from: inputs.from,
    to: inputs.to,
    evaporating: workingInputs.evaporating,
    condensing: workingInputs.condensing,
  },
  output: 'count',
  outputDigits: 3,
  formula: '(discharge / suction pressure) new / (discharge / suction pressure) old, counted from absolute zero',
  validity: 'the same temperatures, within the range of both tables',
  sources: ['property tables of both refrigerants'],
  confidence: 'computed',
  assumptions: [workingAssumption],
  examples: [
    {
      inputs: { from: 'R-22', to: 'R-22', evaporating: '40 degF', condensing: '105 degF' },
      expect: '1',
      tolerance: 1e-9,
      source: 'limit: the same refrigerant',
    },
    {
      inputs: { from: 'R-22', to: 'R-134a', evaporating: '40 degF', condensing: '105 degF' },
      expect: '1.114',
      tolerance: 5e-3,
      source: 'by hand on handbook 3.5: (149.7/49.7) / (225.5/83.3)',
    },
  ],
  compute: ({ from, to, evaporating, condensing }, { say }) => {
    const levels = [from, to].map((gas) => [bubblePressure(gas, condensing), dewPressure(gas, evaporating)] as const);
    const [before, after] = levels.map(([high, low]) => (high === null || low === null ? null : high / low));
    if (before == null || after == null)
      return { refused: `The tables of ${before == null ? from.name : to.name} do not reach these temperatures.` };
    const value = after / before;
    return {
      value,
      workings: () => [
        ...[from, to].map(
          (gas, k) =>
            `${gas.name}: ${say('pressure', levels[k]![0]!, 'psia')} / ${say('pressure', levels[k]![1]!, 'psia')} = ${(k === 0 ? before : after).toFixed(3)}`,
        ),
        `${after.toFixed(3)} / ${before.toFixed(3)} = ${value.toFixed(3)}`,
      ],
    };
  },
});

/** How much wider the opening of the metering device must be: an incompressible jet of the same duty. */
export const valveSizeChange = comparison(
  'valve-size-change',
  'Opening of the expansion valve, new over old',
  '1 / (effect × √(liquid density × pressure difference)), new / old',
  (before, after) => jetArea(after) / jetArea(before),
  (duty, say) =>
    `effect ${say('enthalpy', duty.effect, 'Btu/lb')}, liquid density ${say('density', duty.liquidDensity)}, pressure difference ${say('pressure-difference', duty.dischargePressure - duty.suctionPressure)}`,
  [
    same,
    {
      inputs: { from: 'R-22', to: 'R-407C', ...work },
      expect: '1',
      tolerance: 0.1,
      source: 'trade text: R-407C works with the valves of R-22, from memory',
    },
    {
      inputs: { from: 'R-22', to: 'R-134a', ...work },
      expect: '1.27',
      tolerance: 0.03,
      source:
        'by hand: effects of 72.1 (handbook WE-26) and about 67 Btu/lb (printed tables of R-134a, from memory), densities 1.93 and 1.96 (handbook 9.1), pressure differences 142.2 and 100.0 psi (handbook 3.5)',
    },
  ],
);

/** Area that a duty of 1 W asks for, up to the coefficient of the opening, which is the same for both refrigerants. */
const jetArea = (duty: Duty): number =>
  1 / duty.effect / Math.sqrt(duty.liquidDensity * (duty.dischargePressure - duty.suctionPressure));
