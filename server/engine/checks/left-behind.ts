import { farEnd, type Part } from '../circuit/graph';
import { isLine } from '../circuit/kinds';
import type { Space } from '../circuit/spaces';
import type { Plant } from '../circuit/state';
import type { Severity } from '../finding';
import type { Plan } from '../plan/plan';
import { psi } from '../reference/table-units';
import type { RelatedTo, Say } from './define';
import { isOrAre } from './is-are';
import { endName, heldBy, isDrier, openedBy, touched, touchedSpaces } from './plant';
import { isSafety } from './safety-names';
import { gauge, inOwn } from './support';

/** What a circuit must not be left with when the work waits, and when everybody goes. */

/** What stands as nobody may leave it. */
export interface Left {
  readonly message: string | ((say: Say) => string);
  readonly severity: Severity;
  readonly root: unknown;
  readonly concerns: readonly number[];
  readonly related?: readonly RelatedTo[];
  /** Steps that put it right before anybody goes. */
  readonly lines?: readonly string[];
  /** Steps that take it back when somebody comes again. */
  readonly back?: readonly string[];
}

/** What must not stand so even while somebody waits beside it, the gravest first. */
export function waiting(plant: Plant): Left | null {
  const open = leftOpen(plant);
  const atOnce = neverLeft(plant, open, true);
  if (atOnce) return atOnce;
  for (const space of open) {
    const drier = newDrierIn(plant, space);
    if (drier === undefined) continue;
    const cause = openedBy(plant, space.openings[0]!.end);
    return {
      message: (say) =>
        `${say.part(drier)} stands open to the air while the work waits, and takes up its water: fit it after the hold, or cap the line.`,
      severity: 'warning',
      root: cause ?? drier,
      concerns: space.parts,
      ...(cause && { related: [{ cause, message: 'the line was opened here' }] }),
    };
  }
  return null;
}

/** What the crew must not leave, the gravest first. */
export function unattended(plan: Plan, plant: Plant): Left | null {
  const open = leftOpen(plant);
  const atOnce = neverLeft(plant, open, false);
  if (atOnce) return atOnce;
  const [first] = open;
  if (first) {
    const [opening] = first.openings;
    const cause = opening ? openedBy(plant, opening.end) : null;
    const drier = newDrierIn(plant, first);
    return {
      message: (say) =>
        `${say.parts(first.parts)} ${isOrAre(first.parts.length)} left open to the air at ${endName(plant.graph, opening!.end)} while nobody is there${drier === undefined ? '' : `, and ${say.part(drier)} takes up its water`}: cap every end.`,
      severity: 'warning',
      root: cause,
      concerns: open.flatMap((space) => space.parts),
      ...capped(plant, open),
      ...(cause && { related: [{ cause, message: 'it was opened here' }] }),
    };
  }
  const closed = touchedSpaces(plant).filter((space) => !goes(plant, space));
  for (const space of closed) {
    const wet = space.parts.find((index) => plant.parts[index]!.wet !== null);
    if (wet !== undefined)
      return {
        message: (say) => `${say.part(wet)} is left wet with solvent while nobody is there: purge it dry first.`,
        severity: 'warning',
        root: plant.parts[wet]!.wet,
        concerns: [wet],
        related: [{ cause: plant.parts[wet]!.wet, message: 'the solvent came in here' }],
      };
    const held = heldBy(plant, space);
    if (held.gas === 'vacuum' && space.parts.some((index) => plant.parts[index]!.decayTested === null))
      return {
        message: (say) =>
          `${say.parts(space.parts)} ${isOrAre(space.parts.length)} left under a vacuum that no decay test has proved: break it with nitrogen, or prove it before anybody goes.`,
        severity: 'warning',
        root: held.since,
        concerns: space.parts,
        related: [{ cause: held.since, message: 'it was pumped down here' }],
        lines: [`decay-test system for 15 min, rise at most ${inOwn(plan, '300 micron', '40 Pa')}`],
      };
    const test = space.parts.some((index) => plant.parts[index]!.tested?.by === held.since);
    if (held.gas === 'nitrogen' && !test && held.high > plant.atmosphere + holdingCharge)
      return {
        message: (say) =>
          `${say.parts(space.parts)} ${isOrAre(space.parts.length)} left under nitrogen at ${gauge(plan, held.high)} that is no stand test: let it down to a holding charge.`,
        severity: 'warning',
        root: held.since,
        concerns: space.parts,
        related: held.since ? [{ cause: held.since, message: 'it was let in here' }] : [],
        lines: [`release nitrogen to ${inOwn(plan, '10 psig', '70 kPa gauge')} outdoors`],
      };
  }
  return plant.power === 'on' && plant.running ? outOfAction(plant) : null;
}

/** What a line is left with over night to keep air out; more is a test or a mistake. Pa over the atmosphere. */
const holdingCharge = 31 * psi;

/** Liquid between shut valves in nothing but pipe and driers: it has no room to grow as it warms. */
export interface ShutIn {
  readonly space: Space;
  /** The line or the drier that would burst. */
  readonly body: number;
  readonly refrigerant: string;
}

export function liquidSections(plant: Plant): readonly ShutIn[] {
  if (plant.marks.has('pump-down') || plant.marks.has('draw-in')) return [];
  const { parts } = plant.graph;
  return touchedSpaces(plant).flatMap((space) => {
    if (space.openings.length > 0 || !space.parts.every((index) => isFullOfLiquid(parts[index]!))) return [];
    const held = heldBy(plant, space);
    const body =
      space.parts.find((index) => isLine(parts[index]!.kind)) ?? space.parts.find((index) => isDrier(parts[index]!));
    if (held.gas !== 'refrigerant' || !held.liquid || body === undefined) return [];
    return [{ space, body, refrigerant: held.refrigerant ?? 'refrigerant' }];
  });
}

/** Whoever waits at a drier's housing is about to empty it; a line is left shut in by mistake. */
function liquidShutIn(plant: Plant, attended: boolean): Left | null {
  const first = liquidSections(plant).find(({ body }) => !attended || isLine(plant.graph.parts[body]!.kind));
  if (!first) return null;
  const { space, body, refrigerant } = first;
  return {
    message: (say) =>
      `${say.part(body)} is shut in full of liquid ${refrigerant}, with no room to grow as it warms: open a valve at one end, or recover it.`,
    severity: 'error',
    root: `liquid ${body}`,
    concerns: space.parts,
    related: [{ part: body, message: `this ${isDrier(plant.graph.parts[body]!) ? 'drier' : 'line'}` }],
  };
}

const isFullOfLiquid = (part: Part): boolean =>
  part.kind.kind === 'liquid-line' ||
  (part.highSide && ['drier', 'valve', 'fitting', 'metering'].includes(part.kind.group));

/** A valve held open, an alarm or a switch put out of action, on a machine that runs with nobody there. */
function outOfAction(plant: Plant): Left | null {
  // The alarm of a box that was emptied rings for nothing, and is put back when the box is cold again.
  const emptied = [...plant.marks.keys()].some((mark) => mark.startsWith('move-product'));
  const out = [...plant.bypassed].filter(([name]) => !(emptied && name.includes('alarm')));
  const bypassed = out.find(([name]) => isSafety(name)) ?? out[0];
  if (bypassed)
    return {
      message: `${bypassed[0]} ${isOrAre(bypassed[0].endsWith('s') ? 2 : 1)} out of action while the machine runs and nobody is there: restore ${bypassed[0].endsWith('s') ? 'them' : 'it'} before anybody goes.`,
      severity: isSafety(bypassed[0]) ? 'error' : 'warning',
      root: bypassed[0],
      concerns: [],
      related: [{ cause: bypassed[1], message: 'it was put out of action here' }],
      lines: [`restore ${bypassed[0]}`],
    };
  const held = plant.graph.parts.find(
    (part) => touched(plant.graph, part.index) && plant.parts[part.index]!.heldBy !== null,
  );
  if (!held) return null;
  return {
    message: `${held.name} is held open by ${plant.parts[held.index]!.heldBy} while the machine runs and nobody is there: return it to control first.`,
    severity: 'warning',
    root: `held ${held.index}`,
    concerns: [held.index],
    related: [{ part: held.index, message: 'this valve' }],
    lines: [`return ${held.name} to control`],
  };
}

const powered = (plant: Plant, space: Space): Left => ({
  message: (say) =>
    `${say.parts(space.parts)} ${space.parts.length > 1 ? 'stand' : 'stands'} open with the power on: lock it out.`,
  severity: 'error',
  root: plant.powerBy ?? plant.graph,
  concerns: space.parts,
  lines: ['lock-out power'],
});

/** What hurts somebody even before anybody goes: power over an open circuit, liquid shut in. */
function neverLeft(plant: Plant, open: readonly Space[], attended: boolean): Left | null {
  const [first] = open;
  return first && plant.power === 'on' ? powered(plant, first) : liquidShutIn(plant, attended);
}

const newDrierIn = (plant: Plant, space: Space): number | undefined =>
  space.parts.find((index) => isDrier(plant.graph.parts[index]!) && plant.parts[index]!.mounted === 'new');

/** Spaces that stand open, of parts that stay in the plant. The mouth of a shut valve is a stub, not an open circuit. */
const leftOpen = (plant: Plant): readonly Space[] =>
  touchedSpaces(plant).filter(
    (space) =>
      space.openings.length > 0 &&
      !goes(plant, space) &&
      space.parts.some((index) => plant.graph.parts[index]!.kind.shuts === undefined),
  );

/** Old equipment that is taken away, or is about to be. */
const goes = (plant: Plant, space: Space): boolean =>
  space.parts.every((index) => {
    const { standing } = plant.graph.parts[index]!;
    return plant.parts[index]!.mounted === 'old' && (standing === 'new' || standing === 'removed');
  });

/** A cap on every open end, and off again; nothing where an end is crimped or choked and takes none. */
function capped(plant: Plant, open: readonly Space[]): Pick<Left, 'lines' | 'back'> {
  const { graph } = plant;
  const ends = open.flatMap((space) => space.openings.map(({ end }) => end));
  if (ends.some((end) => plant.ends[end]!.closure !== null)) return {};
  const at = new Map<string, string[]>();
  for (const index of [...new Set(ends.map((end) => graph.ends[end]!.part))].sort((a, b) => a - b)) {
    const part = graph.parts[index]!;
    if (part.ends.length !== 2) return {};
    const own = ends.filter((end) => graph.ends[end]!.part === index);
    const which = own.length === 2 ? 'both ends' : own[0] === farEnd(part) ? 'far end' : 'near end';
    at.set(which, [...(at.get(which) ?? []), part.name]);
  }
  const all = [...at].map(([which, names]) => `${names.join(', ')} at ${which}`);
  return { lines: all.map((each) => `cap ${each}`), back: all.map((each) => `uncap ${each}`) };
}
