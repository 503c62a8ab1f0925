import { farEnd, nearEnd, type Part } from '../circuit/graph';
import { contentsOfCell, setCell } from '../circuit/settle';
import { cellOf, hasGap, neighbours, type Space, spaces } from '../circuit/spaces';
import { airOf, type Closure, type Contents, filled, type PartState } from '../circuit/state';
import { isUnread } from '../plan/step';
import type { Amount } from '../plan/term';
import type { Act, Target } from './verb';

/** What several verbs do to the plant, each said once. */

export type Ends = 'both ends' | 'far end' | 'near end';

export const part = (act: Act, index: number): Part => act.draft.graph.parts[index]!;

/** The ends that a step means; of a part with two passages, all four at "both ends". */
export function endsOf(act: Act, index: number, which: Ends | undefined): readonly number[] {
  const it = part(act, index);
  if (which === 'far end') return [farEnd(it)];
  if (which === 'near end') return [nearEnd(it)];
  return it.ends;
}

const spaceAt = (act: Act, end: number): Space => {
  const now = act.draft.now();
  return (
    spaces(now).find((space) => space.cells.includes(cellOf(end))) ?? {
      cells: [cellOf(end)],
      parts: [act.draft.graph.ends[end]!.part],
      openings: [],
    }
  );
};

/** What a space holds: of several contents the one under the highest pressure. */
export function heldIn(act: Act, space: Space): Contents {
  const now = act.draft.now();
  return space.cells
    .map((cell) => contentsOfCell(now, cell))
    .reduce((most, each) => (each.high > most.high ? each : most));
}

/**
 * Undoes the joints at some ends. A joint of two ends comes apart on both sides; of a tee only this end comes off, of
 * a branch box every tube that is joined to it.
 */
export function undo(act: Act, index: number, ends: readonly number[], how: 'undone' | 'cut' | 'taken off'): void {
  const { draft } = act;
  const undone = ends.filter((end) => draft.end(end).attached);
  if (undone.length > 0) {
    const space = spaceAt(act, undone[0]!);
    act.emit({ type: 'opens', part: index, ends: undone, held: heldIn(act, space), space, how });
    // The other end of the part may hang in another space, behind its own shut valve.
    for (const end of undone.slice(1)) {
      const other = spaceAt(act, end);
      if (other.cells.join() !== space.cells.join())
        act.emit({ type: 'opens', part: index, ends: [end], held: heldIn(act, other), space: other, how });
    }
  }
  for (const end of undone) {
    const joint = draft.graph.joints[draft.graph.ends[end]!.joint];
    const isTee = (joint?.ends.length ?? 0) > 2 && part(act, index).kind.kind !== 'branch-box';
    const off = joint && !isTee ? joint.ends : [end];
    for (const each of off) {
      draft.setEnd(each, { attached: false, detachedBy: act.cause });
      loseTest(act, draft.graph.ends[each]!.part);
    }
  }
}

const loseTest = (act: Act, index: number): void => {
  if (act.draft.part(index).tested) act.draft.setPart(index, { tested: null });
};

/** Makes up the joints at some ends: caps come off; whatever else closes an end stays. */
export function makeUp(act: Act, ends: readonly number[]): void {
  const { draft } = act;
  for (const end of ends) {
    const others = neighbours(draft.now(), end).filter((each) => each !== end);
    for (const each of [end, ...(others.length === 1 ? others : [])]) {
      if (draft.part(draft.graph.ends[each]!.part).mounted === 'none' && each !== end) continue;
      const closure = draft.end(each).closure;
      draft.setEnd(each, { attached: true, ...(closure?.kind === 'cap' ? { closure: null } : {}) });
      loseTest(act, draft.graph.ends[each]!.part);
    }
    // Where the neighbour is not in place yet, its end waits to be made up when it comes. At a tee, a new part that was
    // set there is made up with the last line that comes to it.
    const waiting = others.filter((each) => !draft.end(each).attached);
    const [last] = waiting;
    if (others.length > 1 && waiting.length === 1 && last !== undefined) {
      const state = draft.part(draft.graph.ends[last]!.part);
      if (state.mounted === 'new' && state.setBy !== null && draft.end(last).detachedBy === state.setBy)
        draft.setEnd(last, { attached: true });
    }
  }
}

/** Takes parts off. What stood between them and their neighbours is open from then on. */
export function takeOff(act: Act, indexes: readonly number[], how: 'cut' | 'taken off'): void {
  const { draft } = act;
  for (const index of indexes) undo(act, index, part(act, index).ends, how);
  for (const index of indexes) {
    for (const end of part(act, index).ends) draft.setEnd(end, { closure: null });
    draft.setPart(index, { mounted: 'none' });
  }
  if (indexes.length > 0) act.emit({ type: 'unmounts', parts: indexes });
}

/** What a step that sets it in place brings: not what was there before, taken off and put back. */
const isNew = ({ standing }: Part): boolean => standing === 'new' || standing === 'added';

/** Puts parts in place, without making up their joints to what stands there already. */
export function putIn(act: Act, indexes: readonly number[]): void {
  const { draft } = act;
  const fresh = indexes.filter((index) => draft.part(index).mounted !== 'new');
  const cut = cutIn(act, fresh);
  for (const index of fresh) {
    const it = part(act, index);
    if (draft.part(index).mounted === 'old') takeOff(act, [index], 'taken off');
    const own = it.unit !== null ? part(act, it.unit).properties.holds : it.properties.holds;
    const pressure = own ? act.plan.startPressure(own.refrigerant) : null;
    const contents =
      own && pressure ? filled(own.refrigerant, pressure, act.cause) : airOf(draft.before.atmosphere, act.cause);
    draft.setPart(index, {
      mounted: 'new',
      contents: draft.part(index).contents.map(() => contents),
      opened: own ? null : act.cause,
      tested: null,
      evacuated: null,
      decayTested: null,
      ownCharge: own !== undefined,
      setBy: act.cause,
      ...(isNew(it)
        ? {
            wet: null,
            unpurged: null,
            residue: { oil: null, share: 0, acid: false },
            finalPurge: null,
            drained: null,
            cores: 'in' as const,
            renewed: act.cause,
          }
        : {}),
      provedZero: null,
      position:
        it.kind.shuts === undefined
          ? null
          : it.properties.closed || it.kind.shuts === 'driven'
            ? 'shut'
            : it.kind.shuts === 'hand'
              ? 'open'
              : 'control',
      heldBy: null,
    });
    const shut =
      it.properties.valves === 'closed' || (it.unit !== null && part(act, it.unit).properties.valves === 'closed');
    for (const end of it.ends) {
      draft.setEnd(end, {
        attached: false,
        closure: null,
        detachedBy: act.cause,
        ...(draft.graph.ends[end]!.valve ? { valve: shut ? 'shut' : 'open' } : {}),
      });
    }
  }
  // Joints among parts that come together are theirs; a neighbour that was made up and waits is met. What is joined past
  // the place of an added part waits for nothing: its tube is cut, and its new joint is still to be made.
  for (const index of fresh) {
    const { standing, kind, ends } = part(act, index);
    const isAdded = standing === 'added' && kind.kind !== 'piercing-valve';
    const waits = (end: number): boolean =>
      draft.end(end).attached && !cut.has(index) && !(isAdded && draft.end(end).detachedBy === null);
    for (const end of ends) {
      const others = draft.graph.joints[draft.graph.ends[end]!.joint]?.ends.filter((each) => each !== end) ?? [];
      const met = others.every(
        (other) =>
          fresh.includes(draft.graph.ends[other]!.part) ||
          (waits(other) && draft.part(draft.graph.ends[other]!.part).mounted !== 'none'),
      );
      if (others.length > 0 && met) draft.setEnd(end, { attached: true });
    }
  }
  if (fresh.length > 0) act.emit({ type: 'mounts', parts: fresh });
}

/** Lets out what stands in a part at a plug of its own; of one that is open anyway nothing is to be feared. */
export function letOut(act: Act, index: number): void {
  for (const space of spaces(act.draft.now())) {
    if (space.openings.length > 0 || !space.parts.includes(index)) continue;
    act.emit({ type: 'drains', part: index, held: heldIn(act, space), space });
  }
}

/** Air comes into a space that is opened and shut again within one step. */
function letAirIn(act: Act, space: Space): void {
  const { draft } = act;
  const air = airOf(draft.before.atmosphere, act.cause);
  for (const cell of space.cells) {
    const owner = draft.graph.ends[cell * 2]!.part;
    const state = draft.part(owner);
    draft.setPart(owner, {
      contents: setCell(draft.graph, state, cell, air),
      opened: state.opened && !state.evacuated && !state.decayTested ? state.opened : act.cause,
      evacuated: null,
      decayTested: null,
    });
  }
}

/**
 * Where the neighbours of a part that comes in are joined to each other past its place, the tube between them is cut for
 * it. A piercing valve alone is clamped on the tube as it is. Returns what was cut in.
 */
function cutIn(act: Act, fresh: readonly number[]): ReadonlySet<number> {
  const { draft } = act;
  const cells = new Set<number>();
  const found = new Set<number>();
  for (const index of fresh) {
    const now = draft.now();
    const { ends, kind } = part(act, index);
    if (kind.kind === 'piercing-valve' || draft.part(index).mounted !== 'none') continue;
    if (ends.some((end) => hasGap(now, draft.graph.ends[end]!.joint))) continue;
    found.add(index);
    for (const end of ends.flatMap((own) => neighbours(now, own))) {
      const space = spaceAt(act, end);
      const owner = draft.graph.ends[end]!.part;
      loseTest(act, owner);
      if (space.cells.some((cell) => cells.has(cell))) continue;
      for (const cell of space.cells) cells.add(cell);
      act.emit({ type: 'opens', part: owner, ends: [end], held: heldIn(act, space), space, how: 'cut' });
      letAirIn(act, space);
    }
  }
  return found;
}

/** Opens a part to the air and shuts it again within one step: a core changed, a valve's inside renewed. */
export function breach(act: Act, index: number, how: 'undone' | 'taken off'): void {
  const { draft } = act;
  const it = part(act, index);
  // What is not there cannot be opened.
  if (draft.part(index).mounted === 'none') {
    act.emit({ type: 'no-effect', why: `${it.name} is not in place`, grave: true, parts: [index] });
    return;
  }
  const space = spaceAt(act, it.ends[0]!);
  act.emit({ type: 'opens', part: index, ends: it.ends, held: heldIn(act, space), space, how });
  letAirIn(act, space);
  loseTest(act, index);
  draft.setPart(index, { renewed: act.cause });
}

/** What stands in place after its old one came out within one step: a new part, which the air has been in since then. */
export const newInPlace = (act: Act, { kind }: Part): Partial<PartState> => ({
  mounted: 'new',
  // A motor valve comes shut, however its forerunner stood.
  ...(kind.shuts === 'driven' ? { position: 'shut', heldBy: null } : {}),
  wet: null,
  unpurged: null,
  residue: { oil: null, share: 0, acid: false },
  opened: act.cause,
  setBy: act.cause,
});

/** Whether a space stands under nitrogen that a gauge shows. */
export function isUnderNitrogen(act: Act, space: Space): boolean {
  const { gas, high } = heldIn(act, space);
  return gas === 'nitrogen' && high > act.plan.site.atmosphere * 1.02;
}

/** The usual hole of a crimp or a choke, 1/8 in (common practice, no source), m. */
const usualHole = 0.003175;

/** The hole that a closure leaves. One that cannot be read is told where it stands; what follows is judged as with the usual one. */
export const holeLeft = (act: Act, opening: Amount | undefined): number | null =>
  act.quantity(opening)?.low ?? (isUnread(act.step, 'opening') ? usualHole : null);

export function close(act: Act, ends: readonly number[], kind: Closure['kind'], opening: number | null): void {
  for (const end of ends) {
    act.draft.setEnd(end, { closure: { kind, opening, by: act.cause } });
    act.emit({ type: 'closes', part: act.draft.graph.ends[end]!.part, end, closure: kind });
  }
}

/** Takes closures of some kinds off the ends of parts; all ends of the plant where no part is named. */
export function uncover(
  act: Act,
  indexes: readonly number[] | null,
  kinds: readonly Closure['kind'][],
  which?: Ends,
): number {
  let count = 0;
  const ends =
    indexes === null
      ? act.draft.graph.ends.map((end) => end.index)
      : indexes.flatMap((index) => endsOf(act, index, which));
  for (const end of ends) {
    const closure = act.draft.end(end).closure;
    if (!closure || !kinds.includes(closure.kind)) continue;
    act.draft.setEnd(end, { closure: null });
    count++;
  }
  return count;
}

/** The ends of a part that stand open to the air or would, were they not closed: its joints there are undone. */
export const freeEnds = (act: Act, index: number): readonly number[] => {
  const now = act.draft.now();
  return part(act, index).ends.filter((end) => {
    const joint = act.draft.graph.ends[end]!.joint;
    return joint >= 0 && hasGap(now, joint);
  });
};

/** Notes that something was done to a thing: `renew seals`. */
export function mark(act: Act, ...what: readonly string[]): void {
  const marks = new Map(act.draft.now().marks);
  for (const each of what) marks.set(each, act.cause);
  act.draft.set({ marks });
  act.emit({ type: 'notes', what });
}

/** Marks each target of a step under the verb's word. */
export function markAll(act: Act, targets: readonly Target[]): void {
  const { word } = act.step.word;
  const what = targets.flatMap((target) => {
    if (target.thing !== null) return [`${word} ${target.thing}`];
    const names = target.parts.map((index) => part(act, index).name);
    const { noun } = target.selector;
    return (names.includes(noun) ? names : [...names, noun]).map((name) => `${word} ${name}`);
  });
  mark(act, ...(targets.length > 0 ? what : [word]));
}
