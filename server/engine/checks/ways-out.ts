import { textOf } from '../../../grammar/print';
import type { Part } from '../circuit/graph';
import { hasGap } from '../circuit/spaces';
import type { Plant } from '../circuit/state';
import type { Edit } from '../finding';
import { child } from '../plan/bind';
import { wordSpan } from '../plan/gather';
import type { BringItem, Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import type { Selector } from '../plan/selection';
import type { Step } from '../plan/step';
import { exactly, type Quantity, type ShowOptions } from '../quantity';
import type { Entry } from '../walk/walk';
import { aroundOf } from './course';
import type { Here, Mend, WayOut } from './define';
import { figureOf, spotOf } from './stock';
import { edits, shown } from './support';

/** Ways out that several checks offer alike. Each gives no edits where what it would touch comes from a standard. */

/** New steps before one. */
export const insertBefore = (title: string, step: Step, ...lines: readonly string[]): WayOut => ({
  title,
  edits: (mend) => edits(mend.insertBefore(step, ...lines)),
});

/** New steps after one. */
export const insertAfter = (title: string, step: Step, ...lines: readonly string[]): WayOut => ({
  title,
  edits: (mend) => edits(mend.insertAfter(step, ...lines)),
});

/** The step comes out. */
export const takeOut = (step: Step): WayOut => ({
  title: 'Take the step out',
  edits: (mend) => edits(mend.remove(step)),
});

/** Where a value stands in its statement: of a pair such as refrigerant and mass one of the two. */
interface Placed {
  readonly from: number;
  readonly to: number;
}

/** Another figure, or a name, in place of one that a step states; what stands around it stays. */
export const writeAt = (step: Step, value: unknown, text: string, title = `Write "${text}"`): readonly WayOut[] => {
  const { from, to } = (value ?? {}) as Partial<Placed>;
  // A step that a departure changes reads another statement than its own.
  if (from === undefined || to === undefined || step.values !== step.bound.values) return [];
  return [{ title, edits: (mend) => mend.write(step, from, to, text) }];
};

/** What a slot of a step says, as it is written. */
export function said(step: Step, slot: string): string {
  const span = step.spans[slot];
  return span ? textOf(step.bound.item).slice(span.from, span.to) : '';
}

/** A figure as a plan writes it: in the plan's own units, with no commas between thousands. */
export const written = (
  plan: Plan,
  quantity: Quantity,
  options: Omit<ShowOptions, 'system' | 'atmosphere'> = {},
): string => shown(plan, quantity, { ...options, grouped: false });

/** A pressure (Pa absolute) as a plan writes it, by the gauge. */
export const writtenGauge = (plan: Plan, pressure: number): string =>
  written(plan, exactly('pressure', pressure), { level: 'gauge' });

/** The step goes behind a later one, or before it: the first that follows it and of which something holds. */
export const moveDown = (
  title: string,
  moved: Pick<Entry, 'cause' | 'slot'>,
  to: 'before' | 'after',
  until: (later: Entry, all: readonly Entry[]) => boolean,
  as?: (text: string) => string,
): WayOut => ({
  title,
  edits: (mend) => {
    const { entries } = mend.view.walk;
    const other = aroundOf(entries, moved).later.find((later) => until(later, entries));
    return other ? mend.move(moved.slot.step, to, other.slot.step, as) : [];
  },
});

/** The step goes before an earlier one. */
export const moveBefore = (title: string, step: Step, earlier: Step): WayOut => ({
  title,
  edits: (mend) => mend.move(step, 'before', earlier),
});

/** Whether a line hangs at nothing any more. */
const isOff = (plant: Plant, line: number): boolean =>
  plant.graph.parts[line]!.ends.every((end) => {
    const { joint } = plant.graph.ends[end]!;
    return joint < 0 || hasGap(plant, joint);
  });

/** The plan's own step, which stands too early or too late, comes before another; a new one where it has none, or cannot move it. */
export function bringBefore(
  mend: Mend,
  own: Step | undefined,
  spot: Step,
  line: string,
  as?: (text: string) => string,
): readonly Edit[] {
  const moved = own ? mend.move(own, 'before', spot, as) : [];
  return moved.length > 0 ? moved : edits(mend.insertBefore(spot, line));
}

/** A line is undone at both ends before a step: by the step of the plan that does it too late, else by a new one. */
export function disconnectBefore(mend: Mend, line: number, step: Step): readonly Edit[] {
  const { entries } = mend.view.walk;
  const at = entries.findIndex((entry) => entry.slot.step === step);
  const late = entries
    .slice(at + 1)
    .find(
      ({ slot, before, after }) => slot.step.word.word === 'disconnect' && !isOff(before, line) && isOff(after, line),
    );
  // Once, before the rounds.
  const spot = entries[at]?.slot.within.find((each) => each.word.word === 'repeat') ?? step;
  return bringBefore(mend, late?.slot.step, spot, `disconnect ${mend.view.plan.graph.parts[line]!.name} at both ends`);
}

/** A line that is flushed comes off at both ends, before anything is sent through it while it hangs there. */
export const takeOffFirst = (here: Here, line: number): WayOut => ({
  title: `Disconnect ${here.before.graph.parts[line]!.name} at both ends first`,
  edits: (mend) => {
    if (isOff(here.before, line)) return [];
    const first = mend.view.walk.entries.find(
      ({ before, events }) =>
        !isOff(before, line) && events.some((event) => event.type === 'flows' && event.line === line),
    );
    return disconnectBefore(mend, line, (first ?? here.entry).slot.step);
  },
});

/** Whether a step puts a test, a pump or a charge on a part. */
export const provesPart = (entry: Entry, part: number): boolean =>
  entry.events.some(
    (event) =>
      (event.type === 'pressurises' || event.type === 'evacuates' || event.type === 'charges') &&
      event.spaces.some((space) => space.parts.includes(part)),
  );

/** Whether a step sets all that is new, whatever it is called. */
export const setsAllNew = (entries: readonly Entry[]): boolean =>
  entries.some(
    (entry) =>
      entry.events.some((event) => event.type === 'mounts') &&
      ((entry.slot.step.values['what'] as readonly Selector[] | undefined) ?? []).some(
        ({ standing, noun }) => standing === 'new' && noun === 'equipment',
      ),
  );

/** The word that says what becomes of a part. */
export function writeStanding(plan: Plan, part: Part, standing: Part['standing']): readonly WayOut[] {
  const bound = plan.partStatements[part.index];
  if (!bound) return [];
  const span = bound.spans['standing'];
  const { to } = wordSpan(bound);
  return [
    {
      title: `State ${part.name} ${standing}`,
      edits: (mend) => [
        span ? mend.change(bound, span, standing) : mend.change(bound, { from: to, to }, ` ${standing}`),
      ],
    },
  ];
}

/** Another thing of the shop in place of what is brought. */
export const bringInstead = (item: BringItem, name: string | undefined): readonly WayOut[] =>
  name === undefined
    ? []
    : [{ title: `Bring ${name}`, edits: (mend) => [mend.change(item.bound, spotOf(item), name)] }];

/** The first thing of the shop's files, of a kind, that serves. */
export const shopHas = (plan: Plan, kind: string, serves: (each: Declaration) => boolean): string | undefined =>
  plan.scope.of(kind).find(serves)?.name;

/** Whether another cylinder holds as much and bears as much as the one that is brought. */
export const replaces = (plan: Plan, item: BringItem, other: Declaration): boolean =>
  (
    [
      ['water-capacity', 'mass'],
      ['service-pressure', 'pressure'],
    ] as const
  ).every(([word, slot]) => {
    const [was, is] = [item.declaration, other].map((each) => figureOf(plan, each, word, slot)?.low ?? 0);
    return is! >= was!;
  });

/** More of what is brought: the number before its name. */
export const bringMore = (item: BringItem, number: number): readonly WayOut[] => {
  const { number: span } = item.bound.spans;
  const at = spotOf(item).from;
  return [
    {
      title: `Bring ${number} x ${item.name}`,
      edits: (mend) => [
        span
          ? mend.change(item.bound, span, String(number))
          : mend.change(item.bound, { from: at, to: at }, `${number} x `),
      ],
    },
  ];
};

/** An empty cylinder in place of one with something in it. */
export function bringEmpty({ bound }: BringItem): readonly WayOut[] {
  const { holding, mass } = bound.spans;
  if (!holding) return [];
  const span = { from: holding.from, to: mass?.to ?? holding.to };
  return [{ title: 'Bring it empty', edits: (mend) => [mend.change(bound, span, 'empty')] }];
}

/** One more line on the list of what is brought. */
export function bringToo(plan: Plan, line: string | null): readonly WayOut[] {
  const bring = child(plan.declaration.bound.block, 'bring');
  return line !== null && bring ? [{ title: `Bring it: ${line}`, edits: (mend) => [mend.addTo(bring, line)] }] : [];
}

/** The steps that let solvent, or any gas, out in the work space where a hose would lead it outdoors. */
export const lettingOut = (entries: readonly Entry[], medium: 'solvent' | 'any'): readonly Entry[] =>
  entries.filter((entry) =>
    entry.events.some(
      (event) =>
        (event.type === 'flows' && !event.outdoors && (medium === 'any' || event.medium === medium)) ||
        (medium === 'any' && event.type === 'lets-down' && !event.outdoors),
    ),
  );

/** What comes out at these steps is led outdoors. */
export function leadOutdoors(entries: readonly Entry[]): readonly WayOut[] {
  const steps = [...new Set(entries.map((entry) => entry.slot.step))];
  return [
    {
      title: steps.length > 1 ? 'Lead every outlet outdoors' : 'Lead the outlet outdoors',
      edits: (mend) => {
        const all = steps.map((step) => mend.append(step, ' outdoors'));
        return all.includes(null) ? [] : edits(...all);
      },
    },
  ];
}
