import type { PutBack } from '../document';
import { name, type Run, type Sentence, sentence, words } from '../sentence';
import { type Away, awayIn } from './away';
import type { Sheet } from './sheet';
import { listed, listedRuns, unhyphened } from './words';

/** What the plan put out of its place, step by step, and the step that puts it back. */
export function putBackOf(sheet: Sheet): readonly PutBack[] {
  return [...merged([...trackedOf(sheet), ...settings(sheet)]), ...caps(sheet)];
}

/** One thing, with the steps that took it out of its place and those that put it back. */
interface Tracked extends Away {
  readonly touched: string;
  readonly restored: string | null;
}

function trackedOf(sheet: Sheet): readonly Tracked[] {
  const rows = new Map<string, { away: Away; touched: Set<string>; restored: Set<string>; out: boolean }>();
  let before = awayIn(sheet, sheet.walk.start);
  for (const entry of sheet.walk.entries) {
    const number = sheet.numberOf(entry.slot.step) ?? '';
    const after = awayIn(sheet, entry.after);
    for (const [key, away] of after) {
      const row = rows.get(key);
      if (before.has(key)) {
        // Held open by a magnet only later: what it is put back from is the last.
        if (row) row.away = away;
        continue;
      }
      if (row) {
        if (!row.out) row.touched.add(number);
        row.away = away;
        row.out = true;
      } else rows.set(key, { away, touched: new Set([number]), restored: new Set(), out: true });
    }
    for (const key of before.keys()) {
      const row = after.has(key) ? undefined : rows.get(key);
      // A part that is taken off takes its valve with it; the one that comes in its place is still to be put right.
      if (!row || (row.away.part !== null && entry.after.parts[row.away.part]!.mounted === 'none')) continue;
      row.restored.add(number);
      row.out = false;
    }
    before = after;
  }
  return [...rows.values()].map(({ away, touched, restored, out }) => ({
    ...away,
    touched: [...touched].join(', '),
    // Cores that the plan takes out for good are in their place with the step that took them.
    restored: away.kind === coresOf ? [...touched].join(', ') : out ? null : [...restored].join(', '),
  }));
}

const coresOf = 'Cores of';

/** Things of one kind that go and come with the same steps stand in one row. */
function merged(rows: readonly Tracked[]): readonly PutBack[] {
  const groups = new Map<string, { row: Tracked; subjects: Run[] }>();
  for (const row of rows) {
    const key = JSON.stringify([row.kind, row.stands, row.touched, row.restored]);
    const group = groups.get(key) ?? { row, subjects: [] };
    if (row.subject) group.subjects.push(row.subject);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ row, subjects }) => ({
    what: [
      ...sentence(subjects.length > 0 ? `${row.kind} ` : row.kind),
      ...listedRuns(subjects.map((subject): Sentence => [subject])),
    ],
    stands: row.stands,
    touched: row.touched,
    restored: row.restored,
  }));
}

/** Controls that were set to the new refrigerant, and what was wrapped or tagged. */
function settings(sheet: Sheet): readonly Tracked[] {
  const marks = sheet.walk.entries.at(-1)?.after.marks ?? new Map();
  const rows: Tracked[] = [];
  for (const [mark, cause] of marks) {
    const [verb = '', ...rest] = mark.split(' ');
    const thing = rest.join(' ');
    const touched = sheet.numberOfCause(cause) ?? '';
    const subject = sheet.isName(thing) ? name(thing) : words(unhyphened(thing, sheet.isName));
    if (verb === 'reset')
      rows.push({
        kind: 'Setting of',
        subject,
        part: null,
        stands: 'new value written at it',
        touched,
        restored: touched,
      });
    if (verb === 'wrap' || verb === 'tag') {
      const off = marks.get(`un${mark}`);
      const kind = verb === 'wrap' ? 'Heat guard on' : 'Tag on';
      rows.push({ kind, subject, part: null, stands: 'off', touched, restored: off ? sheet.numberOfCause(off) : null });
    }
  }
  return rows;
}

const hoses = new Set(['recovers', 'evacuates', 'charges', 'pressurises']);

/** A port that a hose was on is tight only with its core and its cap. */
function caps(sheet: Sheet): readonly PutBack[] {
  const steps = new Set<string>();
  for (const entry of sheet.walk.entries)
    if (entry.events.some((event) => hoses.has(event.type))) steps.add(sheet.numberOf(entry.slot.step) ?? '');
  const numbers = [...steps];
  if (numbers.length === 0) return [];
  return [
    {
      what: sentence('Every port that a hose was on'),
      stands: 'core in, no bubbles, cap on and tight',
      touched: numbers.length > 4 ? `${numbers[0]} to ${numbers.at(-1)}` : listed(numbers),
      restored: null,
    },
  ];
}
