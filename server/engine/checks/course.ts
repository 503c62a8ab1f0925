import type { Bound } from '../plan/bind';
import type { Plan } from '../plan/plan';
import type { Step } from '../plan/step';
import type { Amount } from '../plan/term';
import { isProblem, toQuantity } from '../quantity';
import { standardAtmosphere } from '../reference/table-units';
import type { Entry } from '../walk/walk';
import { sectionsLetIn } from './plant';

/** Questions about the course of a plan: what came before and after what. */

/** A time that a step states in a slot, s; 0 where it states none. */
export const timeOf = (entry: Entry, slot: string): number => statedTime(entry.slot.step, slot);

/** The same of any step, a block of steps (`visit`) as well. */
export function statedTime(step: Step, slot: string): number {
  const amount = step.values[slot] as Amount | undefined;
  if (!amount?.literal) return 0;
  const quantity = toQuantity(amount.literal, 'time', standardAtmosphere);
  return isProblem(quantity) ? 0 : quantity.low;
}

export const has = (entry: Entry, type: Entry['events'][number]['type']): boolean =>
  entry.events.some((event) => event.type === type);

export const isCharge = (entry: Entry): boolean =>
  entry.events.some((event) => event.type === 'charges' && event.purpose === 'charge');

/** Whether a step trims the charge with the machine running. */
export const adjustsCharge = (entry: Entry): boolean =>
  entry.events.some((event) => event.type === 'adjusts' && event.what === 'charge');

/** Whether a machine begins to run, or a part of one that runs on: a case that is switched in again has to settle too. */
export const beginsToRun = (entry: Entry): boolean =>
  has(entry, 'starts') || entry.after.lockedOut.size < entry.before.lockedOut.size;

/** The first step by which refrigerant goes in: weighed, with a new unit's valves, or through those of a part that was opened. */
export function firstFill(entries: readonly Entry[]): number {
  const filled = entries.findIndex((entry) => isCharge(entry) || has(entry, 'lets-in'));
  return filled >= 0 ? filled : entries.findIndex((entry) => sectionsLetIn(entry.before, entry.after).length > 0);
}

/** The start that the job works towards: the first after refrigerant went in. */
export function firstStart(entries: readonly Entry[]): number {
  const from = firstFill(entries);
  return from < 0 ? -1 : entries.findIndex((entry, at) => at > from && has(entry, 'starts'));
}

const nothing: readonly string[] = [];

/** What a step has noted that it did ("leak-check system"). */
export function marksLeft(entry: Entry): readonly string[] {
  if (entry.before.marks === entry.after.marks) return nothing;
  let found = nothing;
  for (const event of entry.events)
    if (event.type === 'notes') found = found === nothing ? event.what : [...found, ...event.what];
  return found;
}

/** Whether a step has noted something of this kind. */
export const leaves = (entry: Entry, mark: RegExp): boolean => marksLeft(entry).some((name) => mark.test(name));

/** The steps before one and those behind it, in a walk that knows it by its cause; none where it does not. */
export function aroundOf(
  entries: readonly Entry[],
  { cause }: Pick<Entry, 'cause'>,
): { readonly earlier: readonly Entry[]; readonly later: readonly Entry[] } {
  const at = entries.findIndex((each) => each.cause === cause);
  return at < 0 ? { earlier: [], later: [] } : { earlier: entries.slice(0, at), later: entries.slice(at + 1) };
}

/** Whether something of this kind was noted down between two steps: `acid-test system`. */
export const markedAfter = (entries: readonly Entry[], from: number, mark: RegExp): boolean =>
  entries.slice(from + 1).some((entry) => leaves(entry, mark));

export const marked = (entry: Entry | undefined, mark: RegExp): boolean =>
  [...(entry?.after.marks.keys() ?? [])].some((name) => mark.test(name));

/** A statement of the plan's own block, by its word. */
export const statement = (plan: Plan, word: string): Bound | undefined =>
  plan.declaration.bound.block.find((bound) => bound.word?.word === word);

/** The visit that a step stands in; none before the crew goes for the first time. */
export const visitOf = (entry: Entry): Step | undefined => entry.slot.within.find((step) => step.word.word === 'visit');

/** The last step before the crew goes away after this one. */
export const lastBeforeLeaving = (entries: readonly Entry[], entry: Entry): Step =>
  (entries.filter((each) => visitOf(each) === visitOf(entry)).at(-1) ?? entry).slot.step;
