import type { Plan } from '../plan/plan';
import type { Step } from '../plan/step';
import type { Amount } from '../plan/term';
import { between, exactly, isProblem, type Quantity, toQuantity } from '../quantity';
import { fact } from '../reference/fact';
import { hour, minute } from '../reference/table-units';
import type { Verb } from '../steps/verb';
import type { Entry } from '../walk/walk';
import { timesOf, type WayBack, waysBack } from './rounds';

/** Time of one entry of the walk over all its rounds, s, least to most. */
export interface StepTime {
  /** Somebody's hands are on it. */
  readonly work: Quantity;
  /** A pump, a test or a heater works, and nobody needs to. */
  readonly wait: Quantity;
}

export interface TimeRun {
  readonly steps: ReadonlyMap<Entry, StepTime>;
  readonly work: Quantity;
  readonly wait: Quantity;
  /** Work that is done while something waits: it does not touch the circuit. */
  readonly meanwhile: Quantity;
  /** From the first step to the last without waits through which nobody stays. */
  readonly onSite: Quantity;
  /** Long waits, at which the crew leaves. */
  readonly long: readonly { readonly entry: Entry; readonly wait: Quantity }[];
  readonly visits: number;
  /** What one round of each way back takes at the most, s. */
  readonly again: readonly { readonly way: WayBack; readonly time: number }[];
  readonly people: number;
}

/** Steps that go on by themselves for the time that they state. */
const unattended = new Set(['run', 'energise', 'evacuate', 'decay-test', 'pressure-test', 'break-vacuum']);
/** Steps that are nothing but their time: what they state stands in the place of the usual minutes. */
const onlyTime = new Set(['evacuate', 'watch']);
/** Steps that touch nothing of the circuit and that nothing waits for: they are done while a pump or a test works. */
const beside = new Set(['notify', 'move-product', 'photo', 'tag', 'untag', 'check']);
/** Through a wait of this length nobody stays. */
export const longWait = fact(
  'time',
  4 * hour,
  4 * hour,
  'nobody stays through 4 h: common practice, no source',
  'practice',
);

/**
 * Time of a plan, with steps in their order and every test passed: one pair of hands works on the circuit, and what does
 * not touch it is done while a pump, a test or a heater works, by a second pair where the crew has one.
 */
export function runTime(plan: Plan, entries: readonly Entry[]): TimeRun {
  const steps = new Map<Entry, StepTime>();
  const visited = new Set<Step>();
  for (const entry of entries) {
    const visit = entry.slot.within.find((outer) => outer.word.word === 'visit');
    const arrives = visit !== undefined && !visited.has(visit);
    if (arrives) visited.add(visit);
    steps.set(entry, timeOf(plan, entry, arrives ? minutesOf(visit) : [0, 0]));
  }
  const onceAgain = ({ from, to }: WayBack): number =>
    entries.slice(to, from + 1).reduce((total, entry) => {
      const { work, wait } = steps.get(entry)!;
      return total + work.high + wait.high;
    }, 0);
  const people = Math.max(
    1,
    plan.crew.reduce((sum, member) => sum + member.number, 0),
  );
  const work = sum([...steps.values()].map((each) => each.work));
  const wait = sum([...steps.values()].map((each) => each.wait));
  const long = entries.flatMap((entry) => {
    const { wait: own } = steps.get(entry)!;
    return own.low >= longWait.quantity.low ? [{ entry, wait: own }] : [];
  });
  const spans = (['low', 'high'] as const).map((end) => span(entries, steps, people, end));
  const done = (['low', 'high'] as const).map((end, k) => Math.max(0, work[end] + wait[end] - spans[k]!));
  // The least that is done meanwhile: what is saved is the same time at both ends, so that the ends stay together.
  const saved = Math.min(...done);
  const left = (['low', 'high'] as const).map((end) =>
    Math.max(0, work[end] + wait[end] - saved - long.reduce((most, each) => most + each.wait[end], 0)),
  );
  return {
    steps,
    work,
    wait,
    meanwhile: exactly('time', saved),
    onSite: between('time', left[0]!, left[1]!),
    long,
    visits: visited.size,
    again: waysBack(entries).map((way) => ({ way, time: onceAgain(way) })),
    people,
  };
}

/** Time from start to end, s: the longer of the chain on the circuit and what is done beside it. */
function span(
  entries: readonly Entry[],
  steps: ReadonlyMap<Entry, StepTime>,
  people: number,
  end: 'low' | 'high',
): number {
  let hands = 0;
  let second = 0;
  let circuit = 0;
  let before = 0;
  for (const entry of entries) {
    const { work, wait } = steps.get(entry)!;
    if (beside.has(entry.slot.step.word.word)) {
      // It comes after the step before it has begun its wait, and is never put earlier than the plan has it.
      const start = Math.max(before, people > 1 ? second : hands);
      if (people > 1) second = start + work[end];
      else hands = start + work[end];
      continue;
    }
    const start = Math.max(hands, circuit);
    hands = start + work[end];
    circuit = hands + wait[end];
    before = people > 1 ? start : hands;
  }
  return Math.max(hands, second, circuit);
}

const minutesOf = (step: Step): readonly [number, number] => {
  const minutes = (step.word as Partial<Verb>).minutes ?? [0, 0];
  return [minutes[0] * minute, minutes[1] * minute];
};

function timeOf(plan: Plan, entry: Entry, arrival: readonly [number, number]): StepTime {
  const { step } = entry.slot;
  const word = step.word.word;
  const times = timesOf(entry);
  const usual = minutesOf(step);
  // Lines are worked one at a time, and each takes the time that the step states.
  const lines = Math.max(1, entry.events.filter((event) => event.type === 'flows').length);
  const own = quantityOf(plan, step.values['time'] ?? step.values['after']);
  const stated = own ? between('time', own.low * lines, own.high * lines) : null;
  const inPlace = onlyTime.has(word);
  const most = quantityOf(plan, step.values['within'])?.high ?? Number.POSITIVE_INFINITY;
  const waits = unattended.has(word);
  const usualWork = inPlace && (stated || waits) ? ([0, 0] as const) : usual;
  const usualWait = inPlace && waits && !stated ? usual : ([0, 0] as const);
  const low = Math.min(stated?.low ?? usualWait[0], most);
  const high = Math.min(stated?.high ?? usualWait[1], most);
  const scaled = (a: number, b: number): Quantity => between('time', a * times.least, b * times.most);
  if (waits)
    return {
      work: added(scaled(usualWork[0], usualWork[1]), arrival),
      wait: scaled(low, high),
    };
  return {
    work: added(scaled(usualWork[0] + (stated?.low ?? 0), usualWork[1] + (stated?.high ?? 0)), arrival),
    wait: between('time', 0, 0),
  };
}

const added = (quantity: Quantity, more: readonly [number, number]): Quantity =>
  between('time', quantity.low + more[0], quantity.high + more[1]);

const sum = (all: readonly Quantity[]): Quantity =>
  between(
    'time',
    all.reduce((total, each) => total + each.low, 0),
    all.reduce((total, each) => total + each.high, 0),
  );

function quantityOf(plan: Plan, value: unknown): Quantity | null {
  const amount = value as Partial<Amount> | undefined;
  if (!amount?.literal || amount.kind !== 'time') return null;
  const quantity = toQuantity(amount.literal, amount.kind, plan.site.atmosphere);
  return isProblem(quantity) || quantity.kind !== 'time' ? null : quantity;
}
