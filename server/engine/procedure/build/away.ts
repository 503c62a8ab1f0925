import type { Plant } from '../../circuit/state';
import { isWaterValve } from '../../steps/valves';
import { name, type Run, words } from '../sentence';
import type { Sheet } from './sheet';
import { unhyphened } from './words';

/** Something that does not stand as it must at the end of the job. */
export interface Away {
  /** What kind of thing: "Cap on", "Hand valve". Things of one kind that come and go together stand in one row. */
  readonly kind: string;
  readonly subject: Run | null;
  /** Index of the part that it is of; null for what is no part's own. */
  readonly part: number | null;
  /** How it must stand at the end. */
  readonly stands: string;
}

const closures: Readonly<Record<string, readonly [kind: string, stands: string]>> = {
  cap: ['Cap on', 'off'],
  plug: ['Plug in', 'out'],
  tape: ['Tape on', 'off'],
  crimp: ['Crimp on', 'cut off, end deburred'],
  choke: ['Choke on', 'off, counted back into the bag'],
  swab: ['Swab in', 'out, counted'],
};

const heldOpen: Readonly<Record<string, string>> = { magnet: ', magnet off', stem: ', stem back' };

/** Everything of the plant that is out of its place, by a key that stays the same from step to step. */
export function awayIn(sheet: Sheet, plant: Plant): ReadonlyMap<string, Away> {
  const away = new Map<string, Away>();
  power(sheet, plant, away);
  for (const part of sheet.plan.graph.parts) {
    if (plant.parts[part.index]!.mounted === 'none') continue;
    seats(sheet, plant, part.index, away);
    ends(sheet, plant, part.index, away);
  }
  return away;
}

function power(sheet: Sheet, plant: Plant, away: Map<string, Away>): void {
  for (const thing of plant.bypassed.keys()) {
    const subject = sheet.isName(thing) ? name(thing) : words(unhyphened(thing, sheet.isName));
    away.set(
      `bypass ${thing}`,
      isWaterValve(thing)
        ? { kind: 'Shut:', subject, part: null, stands: 'open, water flows' }
        : { kind: 'Put out of action:', subject, part: null, stands: 'in action, tag off' },
    );
  }
  if (plant.power !== 'on')
    away.set('power', { kind: 'Power', subject: null, part: null, stands: 'on, lock and tag off, covers closed' });
  for (const index of plant.lockedOut.keys())
    away.set(`lock ${index}`, {
      kind: 'Lock on',
      subject: name(sheet.plan.graph.parts[index]!.name),
      part: null,
      stands: 'off, switch on',
    });
}

/** Valves in the part itself, and the cores of a drier. */
function seats(sheet: Sheet, plant: Plant, index: number, away: Map<string, Away>): void {
  const part = sheet.plan.graph.parts[index]!;
  const state = plant.parts[index]!;
  const subject = name(part.name);
  const { shuts } = part.kind;
  const shutAsFound = (part.standing === 'kept' || part.standing === 'reused') && part.properties.closed === true;
  if (shuts === 'hand' && (state.position === 'shut') !== shutAsFound)
    away.set(`hand ${index}`, {
      kind: 'Hand valve',
      subject,
      part: index,
      stands: shutAsFound ? 'shut, as found' : 'open, cap on and tight',
    });
  if ((shuts === 'driven' || shuts === 'power' || shuts === 'control') && state.position !== 'control')
    away.set(`driven ${index}`, {
      kind: 'Valve',
      subject,
      part: index,
      stands: `under its control${heldOpen[state.heldBy ?? ''] ?? ''}`,
    });
  if (state.cores === 'out')
    away.set(`cores ${index}`, {
      kind: 'Cores of',
      subject,
      part: index,
      stands: 'as the plan leaves them, shell closed',
    });
}

/** Valves at the ends of a part or of a new unit, and what closes an open end. */
function ends(sheet: Sheet, plant: Plant, index: number, away: Map<string, Away>): void {
  const { graph } = sheet.plan;
  const part = graph.parts[index]!;
  for (const end of part.ends) {
    const { closure, valve } = plant.ends[end]!;
    if (graph.ends[end]!.valve && valve === 'shut') {
      const owner = part.unit === null ? part : graph.parts[part.unit]!;
      away.set(`valves ${owner.index}`, {
        kind: part.unit === null ? 'Valves of' : 'Service valves of',
        subject: name(owner.name),
        part: null,
        stands: 'open, caps on and tight',
      });
    }
    const closing = closure ? closures[closure.kind] : undefined;
    if (closure && closing)
      away.set(`${closure.kind} ${index}`, {
        kind: closing[0],
        subject: name(part.name),
        part: null,
        stands: closing[1],
      });
  }
}
