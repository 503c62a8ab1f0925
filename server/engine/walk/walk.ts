import { Draft, type Released, settle } from '../circuit/settle';
import { beginning, type Cause, type Plant } from '../circuit/state';
import type { Plan } from '../plan/plan';
import type { Step } from '../plan/step';
import type { Values } from '../plan/vocabulary';
import type { Event } from '../steps/events';
import type { Verb } from '../steps/verb';
import { Acting } from './act';
import { samePlant } from './same';

/** A step's place in the walk. In a repeat a step has two: its first and its last round. */
export interface Slot {
  readonly step: Step;
  readonly round: number | null;
  /** The blocks that it stands in, from outside to inside. */
  readonly within: readonly Step[];
}

/** One step as it was walked: how the plant stood before and after, and what the step did. */
export interface Entry {
  readonly slot: Slot;
  readonly cause: Cause;
  readonly before: Plant;
  readonly after: Plant;
  readonly events: readonly Event[];
  /** What escaped into the air as the step opened something. */
  readonly released: readonly Released[];
}

/** The walk of a plan: the way on which every test passes, and the first and the last round of each repeat. */
export interface Walk {
  readonly start: Plant;
  readonly entries: readonly Entry[];
}

const laid = new WeakMap<Step, readonly Slot[]>();

/** The slots of a list of steps. Those of a block are remembered by the block, which keeps its identity while nothing in it changes. */
export function slotsOf(steps: readonly Step[]): readonly Slot[] {
  const slots: Slot[] = [];
  for (const step of steps) {
    let own = laid.get(step);
    if (!own) laid.set(step, (own = lay(step)));
    for (const slot of own) slots.push(slot);
  }
  return slots;
}

function lay(step: Step): readonly Slot[] {
  if (!step.word.block || step.word.block !== 'steps') return [{ step, round: null, within: [] }];
  const inner = slotsOf(step.children).map((slot): Slot => ({ ...slot, within: [step, ...slot.within] }));
  if (step.word.word !== 'repeat') return inner;
  const least = Math.max(1, Math.floor(roundsOf(step).least));
  const round = (number: number): Slot[] => inner.map((slot) => ({ ...slot, round: slot.round ?? number }));
  return least === 1 ? round(1) : [...round(1), ...round(least)];
}

/** How often a repeat is gone through; once where nothing is said. */
export function roundsOf(repeat: Step): { readonly least: number; readonly most: number } {
  const least = (repeat.values['least'] as number | undefined) ?? 1;
  return { least, most: Math.max(least, (repeat.values['most'] as number | undefined) ?? least) };
}

/** Walks a plan. With an earlier walk of the same plan, only what an edit changed is walked again. */
export function walk(plan: Plan, earlier?: { readonly plan: Plan; readonly walk: Walk }): Walk {
  const slots = slotsOf(plan.steps);
  const old = earlier && earlier.plan.head === plan.head ? earlier.walk : null;
  const start = old?.start ?? beginningOf(plan);
  const entries: Entry[] = [];
  let plant = start;
  let at = 0;
  if (old) {
    const most = Math.min(slots.length, old.entries.length);
    while (at < most && old.entries[at]!.slot === slots[at]) entries.push(old.entries[at++]!);
    if (at > 0) plant = entries[at - 1]!.after;
  }
  // How much of the end is the same: where the state comes to be as it was, the rest needs no walking.
  let same = 0;
  if (old) {
    const most = Math.min(slots.length, old.entries.length) - at;
    while (same < most && old.entries[old.entries.length - 1 - same]!.slot === slots[slots.length - 1 - same]) same++;
  }
  const replaced = old !== null && slots.length === old.entries.length;
  for (; at < slots.length; at++) {
    const left = slots.length - at;
    if (old && left <= same) {
      const before = old.entries[old.entries.length - left]!.before;
      if (samePlant(plant, before)) {
        for (let k = old.entries.length - left; k < old.entries.length; k++) entries.push(old.entries[k]!);
        break;
      }
    }
    // A step that stands in another's stead keeps its handle, so that the states behind it can come out the same.
    const handle = replaced ? old.entries[at]!.cause : { word: slots[at]!.step.word.word };
    const entry = take(plan, slots[at]!, plant, handle);
    entries.push(entry);
    plant = entry.after;
  }
  return { start, entries };
}

/** One step, walked from a state that may not be the one that the plan comes to it with. */
export function take(plan: Plan, slot: Slot, before: Plant, cause: Cause): Entry {
  const draft = new Draft(before, cause);
  const act = new Acting(draft, plan, slot.step, cause, slot.round);
  const verb = slot.step.word as Verb;
  verb.perform(slot.step.values as Values<Verb['form']>, act);
  const { plant, released } = settle(draft);
  return { slot, cause, before, after: plant, events: act.events, released };
}

function beginningOf(plan: Plan): Plant {
  const { refrigerant, oil } = plan.system;
  const atmosphere = plan.site.atmosphere;
  return beginning(plan.graph, {
    atmosphere,
    refrigerant: plan.kinds.includes('new') ? null : refrigerant.before,
    oldOil: oil.before,
    oilChanges: oil.before !== oil.after,
    acid: plan.kinds.includes('burnout'),
    pressureOf: (name) => plan.startPressure(name) ?? [atmosphere * 2, atmosphere * 20],
  });
}
