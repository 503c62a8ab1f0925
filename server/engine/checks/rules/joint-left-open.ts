import { isLine } from '../../circuit/kinds';
import { cellOf, neighbours, type Space, spaces } from '../../circuit/spaces';
import type { Cause, Plant } from '../../circuit/state';
import type { Severity } from '../../finding';
import type { Event } from '../../steps/events';
import type { Entry } from '../../walk/walk';
import { visitOf } from '../course';
import { defineCheck, type WayOut, type Whole } from '../define';
import { isOrAre } from '../is-are';
import { listed } from '../listed';
import { endName, isDrier, isJoined, openedBy, standsNow, touchedSpaces } from '../plant';
import { inOwn } from '../support';
import { insertBefore, moveBefore } from '../ways-out';

/** A joint undone that is never made up, where it first matters. */
export const jointLeftOpen = defineCheck({
  name: 'joint-left-open',
  severity: 'warning',
  title: 'A joint is still open when the circuit is tested, evacuated or charged',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A joint that an earlier step undid, or a part that it took off, is not back when the circuit is tested (a warning), evacuated, charged or given power (an error), or when the plan ends.',
  why: 'A test on an open circuit proves nothing; a pump draws in air and water; a charge goes into the room.',
  source: 'common practice (handbook 13.1: all joints made before the test)',
  wrong: {
    base: 'split',
    instead: [
      ['install filter-drier with nitrogen at 5 cfh\n', ''],
      [
        'pressure-test each open part to 450 psig for 30 min',
        'pressure-test each open part to 450 psig for 30 min # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const told = new Set<unknown>();
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        const stage = stageOf(event);
        if (!stage) continue;
        let once = false;
        for (const space of reached(event, entry.before)) {
          for (const open of leftBy(whole, entry.before, space, told)) {
            // Power that comes too early is one mistake, however many joints are open by then.
            if (once) continue;
            once = event.type === 'powers';
            const { cause, ends, gone } = open;
            whole.report(entry, {
              message: (say) =>
                `${list(whole, ends, gone)} still open when ${stage.when}: ${cause ? `${say.step(cause)} opened ${ends.length > 1 ? 'them' : 'it'}` : `${ends.length > 1 ? 'they were' : 'it was'} never made up`}; make ${ends.length > 1 ? 'them' : 'it'} up before.`,
              slot: 'what',
              severity: stage.severity,
              root: open.root,
              concerns: bothSides(entry.before, ends, gone),
              fixes: event.type === 'pressurises' ? makeUp(whole, entry, ends, gone) : [],
              related: cause ? [{ cause, message: 'it was opened here' }] : [],
            });
          }
        }
      }
    }
    const last = whole.entries.at(-1);
    if (!last) return;
    for (const space of touchedSpaces(last.after)) {
      for (const { cause, ends, gone, root } of leftBy(whole, last.after, space, told)) {
        const entry = whole.entries.find((each) => each.cause === cause);
        if (!entry) continue;
        whole.report(entry, {
          message: `${list(whole, ends, gone)} never made up again: the plan ends with the circuit open.`,
          slot: 'what',
          root,
          concerns: bothSides(last.after, ends, gone),
        });
      }
    }
  },
});

/** Joints of a space that one step left open: those that it undid, or those of the parts that it took off. */
interface Left {
  readonly cause: Cause | null;
  readonly root: string | Cause;
  readonly ends: readonly number[];
  /** Everything that the step took off and that is not back. */
  readonly gone: readonly number[];
}

/** What is open of a space and not told yet, by the step that it goes back to. Both ends of a joint are one mistake. */
function leftBy(whole: Whole, plant: Plant, space: Space, told: Set<unknown>): readonly Left[] {
  const { graph } = plant;
  const found = new Map<unknown, { cause: Cause | null; ends: number[]; off: boolean }>();
  for (const { end } of space.openings) {
    const { joint } = graph.ends[end]!;
    const key = joint < 0 ? `end ${end}` : joint;
    if (told.has(key)) continue;
    told.add(key);
    const missing = missingAt(plant, end);
    const cause =
      earliest(
        whole,
        missing.map((part) => takenOffBy(whole, part)),
      ) ??
      earliest(whole, graph.joints[joint]?.ends.map((each) => undoneBy(plant, each)) ?? []) ??
      openedBy(plant, end);
    const group = found.get(cause);
    if (group) group.ends.push(end);
    else found.set(cause, { cause, ends: [end], off: missing.length > 0 });
  }
  return [...found.values()].flatMap(({ cause, ends, off }): Left[] => {
    const root = cause ?? (off ? `off ${missingAt(plant, ends[0]!).join()}` : 'never');
    if (told.has(root)) return [];
    told.add(root);
    const gone = new Set(ends.flatMap((end) => missingAt(plant, end)));
    const together = graph.parts.flatMap(({ index }) =>
      off && cause !== null && !standsNow(plant, index) && takenOffBy(whole, index) === cause ? [index] : [],
    );
    return [{ cause, root, ends, gone: [...new Set([...gone, ...together])].sort((a, b) => a - b) }];
  });
}

const undoneBy = (plant: Plant, end: number): Cause | null => {
  const { attached, detachedBy } = plant.ends[end]!;
  return attached ? null : detachedBy;
};

/** The last step that took a part off. */
const takenOffBy = (whole: Whole, part: number): Cause | null =>
  whole.entries
    .filter((entry) => entry.events.some((event) => event.type === 'unmounts' && event.parts.includes(part)))
    .at(-1)?.cause ?? null;

/** The step of several that comes first in the walk. */
function earliest(whole: Whole, causes: readonly (Cause | null)[]): Cause | null {
  const left = new Set(causes.filter((each) => each !== null));
  if (left.size < 2) return [...left][0] ?? null;
  return whole.entries.find((entry) => left.has(entry.cause))?.cause ?? null;
}

function stageOf(event: Event): { readonly when: string; readonly severity: Severity } | null {
  switch (event.type) {
    case 'pressurises':
      return event.purpose === 'test' ? { when: 'the pressure test begins', severity: 'warning' } : null;
    case 'evacuates':
      return { when: 'the pump is put on', severity: 'error' };
    case 'charges':
      return { when: 'refrigerant goes in', severity: 'error' };
    case 'powers':
      return event.to === 'on' ? { when: 'the power comes back', severity: 'error' } : null;
    default:
      return null;
  }
}

function reached(event: Event, plant: Plant): readonly Space[] {
  if (event.type === 'pressurises' || event.type === 'evacuates' || event.type === 'charges')
    return event.spaces.filter((space) => space.openings.length > 0);
  return touchedSpaces(plant).filter((space) => space.openings.length > 0);
}

/** What hangs at either side of the open joints, and what is missing there. */
const bothSides = (plant: Plant, ends: readonly number[], gone: readonly number[]): readonly number[] => {
  const { graph } = plant;
  // A part that is off leaves its neighbours on both of its sides open.
  const open = [...ends, ...gone.flatMap((part) => graph.parts[part]!.ends)];
  const near = new Set(open.flatMap((end) => graph.joints[graph.ends[end]!.joint]?.ends ?? [end]));
  const cells = new Set([...near].map(cellOf));
  const there = spaces(plant).filter((space) => space.cells.some((cell) => cells.has(cell)));
  return [...gone, ...there.flatMap((space) => space.parts)];
};

/** Parts that are off at a joint, or behind one that came out for good. */
function missingAt(plant: Plant, end: number): readonly number[] {
  const { graph } = plant;
  const ends = [...(graph.joints[graph.ends[end]!.joint]?.ends ?? []), ...neighbours(plant, end)];
  const off = [...new Set(ends.map((each) => graph.ends[each]!.part))].filter((part) => !standsNow(plant, part));
  const back = off.filter((part) => graph.parts[part]!.standing !== 'removed');
  return back.length > 0 ? back : off;
}

/** "The inlet of suction-line (to filter-drier) is", with the parts that are missing there. */
function list(whole: Whole, ends: readonly number[], gone: readonly number[]): string {
  const { graph } = whole.plan;
  const names = ends.map((end) => endName(graph, end));
  const text = `${names.slice(0, 2).join(' and ')}${names.length > 2 ? ` and ${names.length - 2} more ends` : ''}`;
  const missing = gone.map((part) => graph.parts[part]!.name);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${missing.length > 0 ? `, where ${listed(missing)} ${isOrAre(missing.length)} off,` : ''} ${isOrAre(names.length)}`;
}

/**
 * The step that makes the joints up comes before the test: a later one that does, or a new one where a drier is off or a
 * line was left undone and nothing else is open. A torch gets its nitrogen; what a flare or a gasket wants the plan says.
 */
function makeUp(whole: Whole, test: Entry, ends: readonly number[], gone: readonly number[]): readonly WayOut[] {
  const { graph } = whole.plan;
  const { step } = test.slot;
  const late = whole.entries
    .slice(whole.entries.indexOf(test) + 1)
    .find((entry) => ends.every((end) => isJoined(entry.after, end)));
  if (late) {
    const makes = late.events.some((event) => event.type === 'joins' || event.type === 'mounts');
    // What another step puts in place before it is not there yet by the time of the test.
    const brings = gone.every((part) =>
      late.events.some((event) => event.type === 'mounts' && event.parts.includes(part)),
    );
    const all = ends.every((end) => !isJoined(late.before, end));
    // A later visit makes up what it opens itself.
    return makes && brings && all && visitOf(late) === visitOf(test)
      ? [moveBefore('Do that before the test', late.slot.step, step)]
      : [];
  }
  const joints = new Set(
    [...ends, ...gone.flatMap((part) => graph.parts[part]!.ends)].map((end) => graph.ends[end]!.joint),
  );
  const more = touchedSpaces(test.before).some((space) =>
    space.openings.some(({ end }) => !joints.has(graph.ends[end]!.joint)),
  );
  const parts = gone.map((part) => graph.parts[part]!);
  if (more || !parts.every((part) => isDrier(part) && part.standing !== 'removed') || isMissing(whole, gone)) return [];
  const near = [...joints]
    .flatMap((joint) => graph.joints[joint]?.ends ?? [])
    .map((end) => graph.parts[graph.ends[end]!.part]!);
  if (near.some(({ properties }) => properties.joint !== undefined && properties.joint !== 'brazed')) return [];
  const lines = near.filter((part) => isLine(part.kind) && standsNow(test.before, part.index));
  const made = [...new Set(parts.length > 0 ? parts : lines)];
  const reached = new Set(made.flatMap((part) => part.ends.map((end) => graph.ends[end]!.joint)));
  if (made.length === 0 || ends.some((end) => !reached.has(graph.ends[end]!.joint))) return [];
  const names = made.map((part) => part.name).join(', ');
  const line = `${parts.length > 0 ? `install ${names}` : `connect ${names} at both ends`} with nitrogen at ${inOwn(whole.plan, '5 cfh', '2.4 L/min')}`;
  return [insertBefore(`Before the test: ${line}`, step, line)];
}

/** Whether another part that is to come in never does: one step more would not be all. */
const isMissing = ({ plan, entries }: Whole, but: readonly number[]): boolean =>
  plan.graph.parts.some(
    ({ index, standing }) =>
      (standing === 'new' || standing === 'added') &&
      !but.includes(index) &&
      entries.every((entry) => !standsNow(entry.after, index)),
  );
