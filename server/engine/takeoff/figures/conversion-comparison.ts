import type { Refrigerant } from '../../properties';
import { type Duty, dutyOf, type Working, workingAssumption, workingInputs } from '../cycle';
import { type Example, relation } from '../relation';

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
    compute: ({ from, to, ...working }: { from: Refrigerant; to: Refrigerant } & Working) => {
      const before = dutyOf(from, working);
      const after = dutyOf(to, working);
      if (before === null || after === null)
        return { refused: `The tables of ${before === null ? from.name : to.name} do not reach these temperatures.` };
      const value = ratio(before, after);
      return { value, workings: () => [`${to.name} over ${from.name}: ${value.toFixed(3)}`] };
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
  [same],
);

/** How much more vapour by volume the compressor must take in after a conversion. */
export const suctionVolumeRatio = comparison(
  'suction-volume-ratio',
  'Suction volume, new over old',
  '(effect × suction density), old / new',
  (before, after) => (before.effect * before.suctionDensity) / (after.effect * after.suctionDensity),
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

/** How the pressure ratio changes. */
export const pressureRatioChange = comparison(
  'pressure-ratio-change',
  'Pressure ratio, new over old',
  '(discharge / suction pressure) new / (discharge / suction pressure) old',
  (before, after) =>
    after.dischargePressure / after.suctionPressure / (before.dischargePressure / before.suctionPressure),
  [
    same,
    {
      inputs: { from: 'R-22', to: 'R-134a', ...work },
      expect: '1.114',
      tolerance: 5e-3,
      source: 'by hand on handbook 3.5: (149.7/49.7) / (225.5/83.3)',
    },
  ],
);

/** How much wider the opening of the metering device must be: an incompressible jet of the same duty. */
export const valveSizeChange = comparison(
  'valve-size-change',
  'Opening of the expansion valve, new over old',
  'flow by weight / √(liquid density × pressure difference), new / old',
  (before, after) => jetArea(after) / jetArea(before),
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
