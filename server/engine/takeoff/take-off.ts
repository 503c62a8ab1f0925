import type { Plan } from '../plan/plan';
import type { Entry, Walk } from '../walk/walk';
import type { StepTakeOff } from './draws';
import type { Figure } from './figure';
import { massOf, type NitrogenRun, type PlannedDraw, runNitrogen } from './nitrogen-run';
import { stepTakeOff } from './of-step';
import { timesOf, waysBack } from './rounds';
import { totalsOf } from './totals';

/** A draw of the whole job: what one time takes, and how often. */
export interface Counted {
  readonly entry: Entry;
  readonly draw: StepTakeOff['draws'][number];
  readonly least: number;
  readonly most: number;
}

/** The figures of a plan: those of each step, in order, the totals, and how the stock lasts. */
export interface TakeOff {
  /** By entry of the walk. */
  readonly steps: readonly (readonly Figure[])[];
  readonly totals: readonly Figure[];
  /** Every draw with the times that it is made, least to most. */
  readonly draws: readonly Counted[];
  /** The nitrogen cylinders in the order of the work, at the most rounds. */
  readonly nitrogen: NitrogenRun;
}

const ofEntry = new WeakMap<Entry, { readonly head: Plan['head']; readonly taken: StepTakeOff }>();

/** Takes a walked plan off. What a step gives by itself is kept with its entry; the stock is run anew. */
export function takeOff(plan: Plan, walk: Walk): TakeOff {
  const taken = walk.entries.map((entry) => takenAt(plan, entry));
  const extra = extraRounds(walk.entries);
  const draws: Counted[] = [];
  const planned: PlannedDraw[] = [];
  walk.entries.forEach((entry, at) => {
    const times = timesOf(entry);
    for (const draw of taken[at]!.draws) {
      const most = times.most * (1 + (extra.get(entry) ?? 0));
      draws.push({ entry, draw, least: times.least, most });
      if (draw.of === 'nitrogen')
        for (let k = 0; k < times.most; k++) planned.push({ entry, mass: massOf(draw), least: draw.least });
    }
  });
  const nitrogen = runNitrogen(plan, planned);
  return { steps: taken.map((each) => each.figures), totals: totalsOf(plan, draws, nitrogen), draws, nitrogen };
}

function takenAt(plan: Plan, entry: Entry): StepTakeOff {
  const known = ofEntry.get(entry);
  if (known?.head === plan.head) return known.taken;
  const taken =
    entry.events.length === 0 && entry.slot.step.word.word !== 'change-oil' ? nothing : stepTakeOff(plan, entry);
  ofEntry.set(entry, { head: plan.head, taken });
  return taken;
}

const nothing: StepTakeOff = { figures: [], draws: [] };

/** How often each entry is worked again, at the most, because a later step fails. */
function extraRounds(entries: readonly Entry[]): ReadonlyMap<Entry, number> {
  const extra = new Map<Entry, number>();
  for (const way of waysBack(entries))
    for (let at = way.to; at <= way.from; at++) extra.set(entries[at]!, (extra.get(entries[at]!) ?? 0) + way.times);
  return extra;
}
