import { exactly, show } from '../quantity';
import type { Flow } from '../steps/events';
import { finalPurgeChanges, finalPurgePressure } from '../steps/flow';
import type { PlanView } from '../view';
import type { Entry } from '../walk/walk';
import { isJoined, repeatAround } from './plant';

/** How the solvent of a line's last flush was driven out, up to the step that closed the line or put a pump or a test on it. */
export interface Drying {
  readonly line: number;
  readonly flushed: Entry;
  /** The purge meant to be the last, if there is one that is not of the rounds. */
  readonly purge: { readonly entry: Entry; readonly flow: Flow } | null;
  /** The step that makes it matter. */
  readonly closed: Entry;
  readonly torch: boolean;
  readonly verdict: 'dry' | 'missing' | 'weak' | 'short';
  /** A purge of the rounds that blew harder than the last one: their figures were exchanged. */
  readonly harder?: Flow;
}

const known = new WeakMap<PlanView, readonly Drying[]>();

/** All lines that solvent went through, in the order of the circuit; found once a view, in one way through the walk. */
export function dryings(view: PlanView): readonly Drying[] {
  let found = known.get(view);
  if (!found) known.set(view, (found = find(view)));
  return found;
}

function find(view: PlanView): readonly Drying[] {
  const open = new Map<number, { flushed: Entry; purges: { entry: Entry; flow: Flow }[] }>();
  const found = new Map<number, Drying>();
  for (const entry of view.walk.entries) {
    for (const event of entry.events) if (event.type === 'flows') takeIn(entry, event);
    if (open.size === 0 || !mayClose(entry)) continue;
    for (const [line, { flushed, purges }] of open) {
      if (entry === flushed || !closes(entry, line)) continue;
      const torch = entry.events.some(
        (event) => event.type === 'joins' && event.torch && touches(entry, event.ends, line),
      );
      found.set(line, judge(view, line, flushed, purges, entry, torch));
      open.delete(line);
    }
  }
  return [...found.values()].sort((a, b) => a.line - b.line);

  function takeIn(entry: Entry, flow: Flow): void {
    const through = new Set([flow.line, ...flow.outlets.flatMap((outlet) => outlet.chain)]);
    for (const line of through) {
      // The first time that a line is closed after a flush is what counts.
      if (found.has(line)) continue;
      if (flow.medium === 'solvent') open.set(line, { flushed: entry, purges: [] });
      else if (flow.purpose === 'purge') open.get(line)?.purges.push({ entry, flow });
    }
  }
}

/** Whether a step can close anything at all: it changes an end, sets a part, or puts a test or a pump on something. */
const mayClose = (entry: Entry): boolean =>
  entry.before.ends !== entry.after.ends ||
  entry.events.some((event) => event.type === 'pressurises' || event.type === 'evacuates' || event.type === 'mounts');

const touches = (entry: Entry, ends: readonly number[], line: number): boolean => {
  const { graph } = entry.before;
  return ends.some((end) =>
    (graph.joints[graph.ends[end]!.joint]?.ends ?? [end]).some((each) => graph.ends[each]!.part === line),
  );
};

/** Whether a step joins the line again, or puts a test or a pump on it. */
function closes(entry: Entry, line: number): boolean {
  const { ends } = entry.before.graph.parts[line]!;
  if (ends.some((end) => isJoined(entry.after, end) && !isJoined(entry.before, end))) return true;
  // A torch at an end matters now, though the joint may wait for its neighbour.
  const hot = entry.events.some((event) => event.type === 'joins' && event.torch && touches(entry, event.ends, line));
  if (hot && entry.before.parts[line]!.wet !== null) return true;
  return entry.events.some(
    (event) =>
      (event.type === 'pressurises' || event.type === 'evacuates') &&
      event.spaces.some((space) => space.parts.includes(line)),
  );
}

function judge(
  view: PlanView,
  line: number,
  flushed: Entry,
  purges: readonly { entry: Entry; flow: Flow }[],
  closed: Entry,
  torch: boolean,
): Drying {
  const round = repeatAround(flushed);
  const last = purges.filter(({ entry }) => !round || repeatAround(entry) !== round);
  const best = last.reduce<(typeof last)[number] | null>(
    (most, each) => (most && (most.flow.level ?? 0) >= (each.flow.level ?? 0) ? most : each),
    null,
  );
  const base = { line, flushed, purge: best, closed, torch };
  const harder = best && exchanged(view, line, best, purges);
  if (harder) return { ...base, harder, verdict: 'weak' };
  if (closed.before.parts[line]!.wet === null || last.some(({ entry, flow }) => enough(view, line, entry, flow)))
    return { ...base, verdict: 'dry' };
  if (!best) return { ...base, verdict: 'missing' };
  const gauge = (best.flow.level ?? 0) - view.plan.site.atmosphere;
  const per = best.entry.slot.step.values['per'] !== undefined;
  return { ...base, verdict: !per && gauge < finalPurgePressure * 0.98 ? 'weak' : 'short' };
}

/** So long a purge dries by time, at whatever pressure, s (handbook 5.2: 30 minutes). */
const longPurge = 600;

/** A purge before the last one that blows harder, where the last one stays under the common pressure; null where none does. */
function exchanged(
  view: PlanView,
  line: number,
  { entry, flow }: { readonly entry: Entry; readonly flow: Flow },
  purges: readonly { readonly entry: Entry; readonly flow: Flow }[],
): Flow | null {
  const { atmosphere } = view.plan.site;
  const { rated } = view.plan.graph.parts[line]!.properties;
  const gauge = (each: Flow): number => (each.level ?? 0) - atmosphere;
  if (entry.slot.step.values['per'] !== undefined || gauge(flow) >= finalPurgePressure * 0.98) return null;
  if (flow.level === null || (flow.time?.high ?? 0) >= longPurge) return null;
  if (rated !== undefined && rated - atmosphere < finalPurgePressure * 1.2) return null;
  const last = purges.findIndex((each) => each.entry === entry);
  return purges.slice(0, last).find((each) => gauge(each.flow) >= gauge(flow) * 1.3)?.flow ?? null;
}

/** Purges that the walk alone does not count: a line rated for less, or one whose size nobody stated. */
function enough(view: PlanView, line: number, entry: Entry, flow: Flow): boolean {
  const { rated, tube, length } = view.plan.graph.parts[line]!.properties;
  const gauge = (flow.level ?? 0) - view.plan.site.atmosphere;
  if (rated !== undefined && rated - view.plan.site.atmosphere < finalPurgePressure * 1.2)
    return (flow.volumeChanges ?? 0) >= finalPurgeChanges;
  const strong = entry.slot.step.values['per'] !== undefined || gauge >= finalPurgePressure * 0.98;
  const unknown = flow.volumeChanges === null && !(tube && length !== undefined && flow.time);
  return unknown && strong && (flow.time === null || flow.time.low >= 30);
}

/** "4.2 changes". */
export const changes = (count: number): string =>
  `${show(exactly('count', count), { digits: 2 })} ${count === 1 ? 'change' : 'changes'}`;
