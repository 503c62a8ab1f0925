import { firstStage, tradeStages } from '../reference/pressure-test';
import { standardAtmosphere } from '../reference/table-units';

/**
 * The pressures at which the rise to a test stops, the test itself last, Pa absolute: 10 psig to find an open joint with
 * bubbles, then the stages of the trade that lie below the test. `atmosphere` is the site's.
 */
export const testStages = (test: number, atmosphere: number = standardAtmosphere): readonly number[] => {
  const here = (stage: number): number => stage - standardAtmosphere + atmosphere;
  const stages = [firstStage.quantity.low, ...tradeStages.slice(1)].map(here);
  // A stage that the test hardly passes is no stage of its own.
  return [...stages.filter((stage) => stage < test - 0.05 * (test - atmosphere)), test];
};
