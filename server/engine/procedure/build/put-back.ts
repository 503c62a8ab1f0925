import type { Plant } from '../../circuit/state';
import type { PutBack } from '../document';
import { name, type Run, sentence } from '../sentence';
import type { Sheet } from './sheet';
import { listed, unhyphened } from './words';

/** Something that does not stand as it must at the end of the job. */
interface Away {
  readonly what: readonly (string | Run)[];
  readonly stands: string;
}

/** What the plan put out of its place, step by step, and the step that puts it back. */
export function putBackOf(sheet: Sheet): readonly PutBack[] {
  const rows = new Map<string, { away: Away; touched: string[]; restored: string[]; out: boolean }>();
  let before = awayIn(sheet, sheet.walk.start);
  for (const entry of sheet.walk.entries) {
    const number = sheet.numberOf(entry.slot.step) ?? '';
    const after = awayIn(sheet, entry.after);
    for (const [key, away] of after) {
      if (before.has(key)) continue;
      const row = rows.get(key) ?? { away, touched: [], restored: [], out: true };
      if (row.touched.at(-1) !== number) row.touched.push(number);
      rows.set(key, { ...row, away, out: true });
    }
    for (const key of before.keys()) {
      if (after.has(key)) continue;
      const row = rows.get(key);
      if (!row) continue;
      if (row.restored.at(-1) !== number) row.restored.push(number);
      row.out = false;
    }
    before = after;
  }
  return [...merged(rows), ...settings(sheet), ...caps(sheet)];
}

/** Things of one kind that go and come with the same steps stand in one row. */
function merged(
  rows: ReadonlyMap<string, { away: Away; touched: readonly string[]; restored: readonly string[]; out: boolean }>,
): readonly PutBack[] {
  const groups = new Map<string, PutBack>();
  for (const { away, touched, restored, out } of rows.values()) {
    const row: PutBack = {
      what: sentence(...away.what),
      stands: away.stands,
      touched: touched.join(', '),
      restored: out || restored.length === 0 ? null : restored.join(', '),
    };
    const [lead, subject] = [away.what[0], away.what[1]];
    const key = JSON.stringify([typeof lead === 'string' ? lead : '', row.stands, row.touched, row.restored]);
    const known = groups.get(key);
    if (known && typeof lead === 'string' && subject)
      groups.set(key, { ...known, what: [...known.what, ...sentence(', ', subject)] });
    else groups.set(known ? `${key} ${groups.size}` : key, row);
  }
  return [...groups.values()];
}

const closures: Readonly<Record<string, readonly [what: string, stands: string]>> = {
  cap: ['Cap on', 'off, joint made'],
  plug: ['Plug in', 'out'],
  tape: ['Tape on', 'off'],
  crimp: ['Crimp on', 'cut off, end deburred'],
  choke: ['Choke on', 'off, counted back into the bag'],
  swab: ['Swab in', 'out, counted'],
};

function awayIn(sheet: Sheet, plant: Plant): ReadonlyMap<string, Away> {
  const { graph } = sheet.plan;
  const away = new Map<string, Away>();
  for (const thing of plant.bypassed.keys()) {
    const known = sheet.isName(thing);
    away.set(`bypass ${thing}`, {
      what: ['', known ? name(thing) : unhyphened(thing, sheet.isName)].map((each, k) =>
        k === 0 ? 'Put out of action: ' : each,
      ),
      stands: 'in action, tag off',
    });
  }
  if (plant.power !== 'on') away.set('power', { what: ['Power'], stands: 'on, lock and tag off, covers closed' });
  for (const index of plant.lockedOut.keys())
    away.set(`lock ${index}`, { what: ['Lock on ', name(graph.parts[index]!.name)], stands: 'off, switch on' });
  for (const part of graph.parts) {
    const state = plant.parts[part.index]!;
    if (state.mounted === 'none') continue;
    const asFound = part.standing === 'kept' || part.standing === 'reused' ? part.properties.closed === true : false;
    if (part.kind.shuts === 'hand' && (state.position === 'shut') !== asFound)
      away.set(`hand ${part.index}`, {
        what: ['Valve ', name(part.name)],
        stands: asFound ? 'shut, as found' : 'open, cap on and tight',
      });
    const driven = part.kind.shuts === 'driven' || part.kind.shuts === 'power' || part.kind.shuts === 'control';
    if (driven && state.position !== 'control')
      away.set(`driven ${part.index}`, {
        what: ['Valve ', name(part.name)],
        stands:
          state.heldBy === 'magnet'
            ? 'under its control, magnet off'
            : state.heldBy === 'stem'
              ? 'under its control, stem back'
              : 'under its control',
      });
    if (state.cores === 'out')
      away.set(`cores ${part.index}`, { what: ['Cores of ', name(part.name)], stands: 'out as planned, shell closed' });
    const valves = part.ends.filter((end) => graph.ends[end]!.valve && plant.ends[end]!.valve === 'shut');
    if (valves.length > 0) {
      const owner = part.unit !== null ? graph.parts[part.unit]! : part;
      away.set(`valves ${owner.index}`, {
        what: [part.unit !== null ? 'Service valves of ' : 'Valves of ', name(owner.name)],
        stands: 'open, caps on and tight',
      });
    }
    for (const end of part.ends) {
      const closure = plant.ends[end]!.closure;
      const words = closure ? closures[closure.kind] : undefined;
      if (closure && words)
        away.set(`${closure.kind} ${part.index}`, { what: [`${words[0]} `, name(part.name)], stands: words[1] });
    }
  }
  return away;
}

/** Controls that were set to the new refrigerant, and what was wrapped or tagged. */
function settings(sheet: Sheet): readonly PutBack[] {
  const rows: PutBack[] = [];
  const { entries } = sheet.walk;
  const after = entries.at(-1)?.after.marks ?? new Map();
  for (const [mark, cause] of after) {
    const [verb = '', ...rest] = mark.split(' ');
    const thing = rest.join(' ');
    const number = sheet.numberOfCause(cause) ?? '';
    const shown = sheet.isName(thing) ? name(thing) : unhyphened(thing, sheet.isName);
    if (verb === 'reset')
      rows.push({
        what: sentence('Setting of ', shown),
        stands: 'new value written at it',
        touched: number,
        restored: number,
      });
    if (verb === 'wrap' || verb === 'tag') {
      const off = after.get(`un${mark}`);
      rows.push({
        what: sentence(verb === 'wrap' ? 'Heat guard on ' : 'Tag on ', shown),
        stands: 'off',
        touched: number,
        restored: off ? sheet.numberOfCause(off) : null,
      });
    }
  }
  return rows;
}

/** A port that a hose was on is tight only with its core and its cap. */
function caps(sheet: Sheet): readonly PutBack[] {
  const hosed = new Set<string>();
  for (const entry of sheet.walk.entries)
    if (
      ['recovers', 'evacuates', 'charges', 'pressurises'].some((type) =>
        entry.events.some((event) => event.type === type),
      )
    )
      hosed.add(sheet.numberOf(entry.slot.step) ?? '');
  const steps = [...hosed];
  if (steps.length === 0) return [];
  return [
    {
      what: sentence('Every port that a hose was on'),
      stands: 'core in, no bubbles, cap on and tight',
      touched: steps.length > 4 ? `${steps[0]} to ${steps.at(-1)}` : listed(steps),
      restored: null,
    },
  ];
}
