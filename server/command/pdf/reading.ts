import type { BlankEntry, Reading } from '../../engine/procedure/document';
import { type Slab, slab } from './flow';
import { ruleLine } from './marks';
import { bodySize, leading, noteSize, writingHeight } from './paper';
import type { Pen } from './pen';

const body = { size: bodySize, bold: false };
const note = { size: noteSize, bold: false };
const blankLength = 62;
const timeLength = 46;
const gap = 8;
/** The limit needs this much to stand beside the blanks; with less it stands below them. */
const leastLimit = 90;

function entryWidth(pen: Pen, entry: BlankEntry): number {
  const lead = entry.lead === '' ? 0 : pen.widthOf(entry.lead, body) + 4;
  return lead + blankLength + 4 + pen.widthOf(entry.unit, body);
}

/** The blanks of one reading in rows that fit the width. */
function rowsOf(pen: Pen, entries: readonly BlankEntry[], width: number): readonly (readonly BlankEntry[])[] {
  const rows: BlankEntry[][] = [];
  let used = 0;
  for (const entry of entries) {
    const wide = entryWidth(pen, entry) + gap;
    const row = rows.at(-1);
    if (row === undefined || used + wide > width) {
      rows.push([entry]);
      used = wide;
    } else {
      row.push(entry);
      used += wide;
    }
  }
  return rows;
}

/** A unit that leaves room for its blank. */
const unitRoom = 110;

/** Readings one under the other with label, blanks, limit and time each in a column of its own. */
export function readingSlabs(pen: Pen, given: readonly Reading[], width: number): readonly Slab[] {
  const readings = given.map((one) => ({
    ...one,
    entries: one.entries.map(({ lead, unit }) => ({
      lead: pen.fitted(lead, unitRoom / 2, body),
      unit: pen.fitted(unit, unitRoom, body),
    })),
  }));
  const timeWidth = readings.some((one) => one.time) ? pen.widthOf('time', body) + 4 + timeLength : 0;
  const labelWidth = Math.min(width * 0.32, Math.max(...readings.map((one) => pen.widthOf(one.label, body)))) + gap;
  const blanksRoom = width - labelWidth - timeWidth;
  const all = readings.map((one) => rowsOf(pen, one.entries, blanksRoom));
  const rowWidth = (row: readonly BlankEntry[]) => row.reduce((sum, entry) => sum + entryWidth(pen, entry) + gap, 0);
  const blanksWidth = Math.max(...all.flat().map(rowWidth));
  const beside = blanksRoom - blanksWidth - gap >= leastLimit;
  const limitWidth = beside ? blanksRoom - blanksWidth - gap : width - labelWidth;
  return readings.map((one, index) => {
    const rows = all[index]!;
    const label = pen.set(one.label, labelWidth - gap, body);
    const limit = pen.set(one.limit, limitWidth, note);
    const first = Math.max(writingHeight, label.height + 3, beside ? limit.height + 3 : 0);
    const blanks = first + (rows.length - 1) * writingHeight;
    return slab(blanks + (beside ? 0 : limit.height + 2), (x, y) => {
      const base = y + first - 3.5;
      pen.put(label, x, base - (label.lines.length - 1) * leading(bodySize) - bodySize * 0.95);
      for (const [n, row] of rows.entries()) {
        const line = base + n * writingHeight;
        let at = x + labelWidth;
        for (const entry of row) {
          if (entry.lead !== '') {
            pen.label(entry.lead, at, line, body);
            at += pen.widthOf(entry.lead, body) + 4;
          }
          ruleLine(pen, at, line + 1, blankLength);
          pen.label(entry.unit, at + blankLength + 4, line, body);
          at += blankLength + 4 + pen.widthOf(entry.unit, body) + gap;
        }
      }
      if (beside) {
        const top = base - (limit.lines.length - 1) * leading(noteSize) - noteSize * 0.95;
        pen.put(limit, x + labelWidth + blanksWidth + gap, top);
      } else pen.put(limit, x + labelWidth, y + blanks + 1);
      if (one.time) {
        pen.label('time', x + width - timeWidth, base, body);
        ruleLine(pen, x + width - timeLength, base + 1, timeLength);
      }
    });
  });
}
