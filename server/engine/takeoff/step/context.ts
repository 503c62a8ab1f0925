import { contentsOfCell } from '../../circuit/settle';
import type { Space } from '../../circuit/spaces';
import type { Plan, Stated } from '../../plan/plan';
import type { Amount } from '../../plan/term';
import { exactly, isProblem, type Quantity, toQuantity } from '../../quantity';
import type { Event } from '../../steps/events';
import type { Entry } from '../../walk/walk';
import type { Draw, Release } from '../draws';
import type { Figure } from '../figure';
import { type Given, input } from '../given';
import type { FigureOptions } from '../relation';

/** One walked step while it is taken off: what is found is put into the three lists. */
export interface Context {
  readonly plan: Plan;
  readonly entry: Entry;
  readonly options: Required<FigureOptions>;
  readonly figures: Figure[];
  readonly draws: Draw[];
  readonly releases: Release[];
}

export type Of<T extends Event['type']> = Extract<Event, { type: T }>;

/** A level that a step asks, as an input. */
export const pressure = (value: number): Given => input(exactly('pressure', value), 'plan');

/** What the plan states, in its author's own words; undefined where it does not. */
export const stated = (of: Stated | null): Given | undefined =>
  of ? input(of.quantity, 'plan', of.amount.literal.text) : undefined;

/** Temperature of the gas, where the site says it. */
export const temperature = ({ site }: Plan): { temperature?: Given } => {
  const given = stated(site.outdoors);
  return given ? { temperature: given } : {};
};

/** The pressure that stands in some spaces before the step, the highest; null where they hold nothing known. */
export function standing(entry: Entry, spaces: readonly Space[]): number | null {
  const levels = spaces.flatMap((space) => space.cells.map((cell) => contentsOfCell(entry.before, cell).low));
  return levels.length > 0 ? Math.max(...levels) : null;
}

/** Up to so many parts are named one by one. */
const mostNamed = 4;

export function subjectOf(plan: Plan, spaces: readonly Space[]): string {
  const parts = [...new Set(spaces.flatMap((space) => space.parts))];
  const names = parts.map((index) => plan.graph.parts[index]!.name);
  return names.length <= mostNamed ? names.join(', ') : `${names[0]} … ${names.at(-1)} (${names.length} parts)`;
}

export function quantityOf(plan: Plan, amount: Amount | undefined): Quantity | null {
  if (!amount?.literal) return null;
  const quantity = toQuantity(amount.literal, amount.kind, plan.site.atmosphere);
  return isProblem(quantity) ? null : quantity;
}
