import type { Plan } from '../plan/plan';
import type { Event } from '../steps/events';
import type { Entry } from '../walk/walk';
import type { StepTakeOff } from './draws';
import { nitrogenInAll, solventOfStep } from './figures';
import { computed } from './given';
import { optionsOf } from './options';
import { adjusted, charged } from './step/charge';
import type { Context, Of } from './step/context';
import { flowed } from './step/flow';
import { brazed, filled, letDown } from './step/gas';
import { oiled } from './step/oil';
import { pumpedDown, recovered } from './step/recovery';
import { regulator } from './step/regulator';
import { evacuated, stood } from './step/vacuum';

type Takers = { readonly [T in Event['type']]?: (context: Context, event: Of<T>) => void };

/** Which events bear figures, and who takes them off. */
const takers: Takers = {
  flows: flowed,
  pressurises: filled,
  joins: brazed,
  'lets-down': letDown,
  recovers: recovered,
  evacuates: evacuated,
  stands: stood,
  charges: charged,
  adjusts: adjusted,
};

/** Steps whose figures follow from their words, without an event. */
export const wordsWithFigures: ReadonlySet<string> = new Set(['change-oil', 'add-oil', 'pump-down']);

/** The figures and draws of one walked step, once: a repeat multiplies them afterwards. */
export function stepTakeOff(plan: Plan, entry: Entry): StepTakeOff {
  const context: Context = { plan, entry, options: optionsOf(plan), figures: [], draws: [], releases: [] };
  for (const event of entry.events) takers[event.type]?.(context, event as never);
  regulator(context);
  sums(context);
  oiled(context);
  pumpedDown(context);
  return context;
}

/** The sum over the lines of a step stands first: it is what the crew gets ready. */
function sums({ figures, draws, options }: Context): void {
  const nitrogen = draws.flatMap((draw) => (draw.of === 'nitrogen' ? [computed(draw.figure)] : []));
  if (nitrogen.length > 1) figures.unshift(nitrogenInAll.figure('this step', { draws: nitrogen }, options));
  const solvent = draws.flatMap((draw) => (draw.of === 'solvent' ? [computed(draw.figure)] : []));
  if (solvent.length > 1) figures.unshift(solventOfStep.figure('this step', { passes: solvent }, options));
}
