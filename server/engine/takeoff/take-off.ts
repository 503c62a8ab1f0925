import type { Plan } from '../plan/plan';
import type { Entry, Walk } from '../walk/walk';
import { ChargeLedger } from './charge-ledger';
import type { Counted, StepTakeOff } from './draws';
import type { Figure } from './figure';
import { recoveryCylindersNeeded } from './figures';
import { computed, input } from './given';
import { figuresOfLines, type LineFigures } from './line-run';
import { figuresOfMachine } from './machine';
import { massOf, type NitrogenRun, type PlannedDraw, runNitrogen } from './nitrogen-run';
import { stepTakeOff, wordsWithFigures } from './of-step';
import { runOils } from './oil-run';
import { optionsOf } from './options';
import { type OxygenRun, runOxygen } from './oxygen-run';
import { type RecoveryRun, runRecovery } from './recovery-run';
import { runRefrigerants } from './refrigerant-run';
import { timesOf, waysBack } from './rounds';
import { type Shortfall, shortfallsOf } from './shortfalls';
import { runSolvents } from './solvent-run';
import type { SupplyRun } from './supply-run';
import { runTime, type TimeRun } from './time-run';
import { totalsOf } from './totals';
import { type Waste, wasteOf } from './waste';

export type { Counted };

/** The figures of a plan: those of each step, in order, the totals, and how the stock lasts. */
export interface TakeOff {
  /** By entry of the walk. */
  readonly steps: readonly (readonly Figure[])[];
  readonly totals: readonly Figure[];
  /** What the machine is and becomes; no step bears these. */
  readonly machine: readonly Figure[];
  /** What each line is, and how it suits what will flow through it. */
  readonly lines: readonly LineFigures[];
  /** Every draw with the times that it is made, least to most. */
  readonly draws: readonly Counted[];
  /** The nitrogen cylinders in the order of the work, at the most rounds. */
  readonly nitrogen: NitrogenRun;
  /** Solvent container by container, one run for each solvent, at the most rounds. */
  readonly solvents: readonly SupplyRun[];
  /** What is weighed in, with what the cylinder holds before and after, one run for each refrigerant. */
  readonly refrigerants: readonly SupplyRun[];
  readonly oils: readonly SupplyRun[];
  readonly recovery: RecoveryRun;
  readonly time: TimeRun;
  /** Oxygen in the work space, step after step; its figures stand among those of the steps, too. */
  readonly oxygen: OxygenRun;
  readonly waste: readonly Waste[];
  /** Where the stated stock does not last; empty where none is stated. */
  readonly shortfalls: readonly Shortfall[];
  /** Every default that a figure of the plan takes, told once. */
  readonly defaults: readonly string[];
}

const ofEntry = new WeakMap<Entry, { readonly head: Plan['head']; readonly taken: StepTakeOff }>();

/** Takes a walked plan off. What a step gives by itself is kept with its entry; the stock is run anew. */
export function takeOff(plan: Plan, walk: Walk): TakeOff {
  const taken = walk.entries.map((entry) => takenAt(plan, entry));
  const draws = countedDraws(plan, walk, taken);
  // Whoever asks for no time does not wait for it.
  let spent: TimeRun | null = null;
  const time = (): TimeRun => (spent ??= runTime(plan, walk.entries));
  const runs = {
    nitrogen: runNitrogen(plan, draws.flatMap(planned)),
    solvents: runSolvents(plan, draws),
    refrigerants: runRefrigerants(plan, draws),
    oils: runOils(plan, draws),
    recovery: runRecovery(plan, draws),
  };
  const oxygen = runOxygen(plan, walk.entries, taken, time);
  const options = optionsOf(plan);
  const steps = walk.entries.map((entry, at) => {
    const own = taken[at]!.figures;
    const more = [...cylindersFor(entry, own), ...(oxygen.after.has(entry) ? [oxygen.after.get(entry)!] : [])];
    return more.length > 0 ? [...own, ...more] : own;
  });

  /** How many cylinders a recovery fills, now that it is known what comes out. */
  function cylindersFor(entry: Entry, figures: readonly Figure[]): readonly Figure[] {
    const fill = figures.find((figure) => figure.name === 'safe-fill');
    if (!fill) return [];
    return draws.flatMap(({ entry: own, draw }) =>
      own === entry && draw.of === 'recovery' && draw.mass !== null && draw.mass.high > 0
        ? [
            recoveryCylindersNeeded.figure(
              fill.subject,
              { charge: input(draw.mass, 'computed'), fill: computed(fill) },
              options,
            ),
          ]
        : [],
    );
  }
  // Sums over the whole job are made when they are first asked for: no check reads them, and while somebody types the
  // findings must not wait for them.
  let totals: readonly Figure[] | null = null;
  const summed = (): readonly Figure[] => (totals ??= totalsOf(plan, draws, { ...runs, time: time() }));
  let machine: readonly Figure[] | null = null;
  let lines: readonly LineFigures[] | null = null;
  const ofLines = (): readonly LineFigures[] => (lines ??= figuresOfLines(plan));
  const ofMachine = (): readonly Figure[] => (machine ??= figuresOfMachine(plan));
  const all = (): readonly Figure[] => [
    ...steps.flat(),
    ...ofLines().flatMap(({ figures }) => figures),
    ...ofMachine(),
    ...summed(),
  ];
  let waste: TakeOff['waste'] | null = null;
  let defaults: readonly string[] | null = null;
  return {
    steps,
    draws,
    ...runs,
    oxygen,
    shortfalls: shortfallsOf(runs),
    get time() {
      return time();
    },
    get totals() {
      return summed();
    },
    get machine() {
      return ofMachine();
    },
    get lines() {
      return ofLines();
    },
    get waste() {
      return (waste ??= wasteOf(plan, walk.entries, summed(), runs.recovery));
    },
    get defaults() {
      return (defaults ??= [...new Set(all().flatMap((figure) => figure.defaults))]);
    },
  };
}

const planned = ({ entry, draw, planned: times }: Counted): readonly PlannedDraw[] =>
  draw.of === 'nitrogen' ? Array.from({ length: times }, () => ({ entry, mass: massOf(draw), least: draw.least })) : [];

/** Draws of one step that the stock is run through one by one; repeats within repeats multiply. */
const mostPlanned = 10_000;

/** All draws in the order of the work, with what comes out of the machine by what went in before. */
function countedDraws(plan: Plan, walk: Walk, taken: readonly StepTakeOff[]): readonly Counted[] {
  const extra = extraRounds(walk.entries);
  const draws: Counted[] = [];
  const ledger = new ChargeLedger(plan);
  walk.entries.forEach((entry, at) => {
    const times = timesOf(entry);
    const most = times.most * (1 + (extra.get(entry) ?? 0));
    ledger.letIn(entry);
    for (const draw of taken[at]!.draws) {
      if (draw.of === 'refrigerant') ledger.add(draw.refrigerant, draw.mass);
      const own = draw.of === 'recovery' ? ledger.recovered(draw) : draw;
      draws.push({ entry, draw: own, least: times.least, most, planned: Math.min(times.most, mostPlanned) });
    }
  });
  return draws;
}

function takenAt(plan: Plan, entry: Entry): StepTakeOff {
  const known = ofEntry.get(entry);
  if (known?.head === plan.head) return known.taken;
  const taken =
    entry.events.every(({ type }) => type === 'notes') && !wordsWithFigures.has(entry.slot.step.word.word)
      ? nothing
      : stepTakeOff(plan, entry);
  ofEntry.set(entry, { head: plan.head, taken });
  return taken;
}

const nothing: StepTakeOff = { figures: [], draws: [], releases: [] };

/** How often each entry is worked again, at the most, because a later step fails. */
function extraRounds(entries: readonly Entry[]): ReadonlyMap<Entry, number> {
  const extra = new Map<Entry, number>();
  for (const way of waysBack(entries))
    for (let at = way.to; at <= way.from; at++) extra.set(entries[at]!, (extra.get(entries[at]!) ?? 0) + way.times);
  return extra;
}
