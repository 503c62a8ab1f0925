import type { StepBlock } from '../../engine/procedure/block';
import type { StepLine } from '../../engine/procedure/document';
import { strong } from '../../engine/procedure/sentence';
import { type Slab, slab, stacked } from './flow';
import { boxSize, cautionSign, ruleLine, tickBox } from './marks';
import { bodySize, leading } from './paper';
import type { Pen } from './pen';
import { readingSlabs } from './reading';

const body = { size: bodySize, bold: false };
const bold = { size: bodySize, bold: true };
const numberAt = boxSize + 8;
/** Where the sentence and all that is indented under it begin. */
const textAt = numberAt + 28;

function sentenceSlab(pen: Pen, step: StepBlock, width: number): Slab {
  const room = width - textAt;
  const aim = pen.set(step.aim, room * 0.45, bold);
  const aimWidth = step.aim.length === 0 ? 0 : Math.max(...aim.lines.map((line) => line.width)) + 14;
  const text = pen.set(step.text, room - aimWidth, bold);
  return slab(Math.max(text.height, aim.height), (x, y) => {
    tickBox(pen, x, y + 1);
    pen.label(step.number, x + numberAt, y + bodySize * 0.95, bold);
    pen.put(text, x + textAt, y);
    pen.put(aim, x + width - aim.width, y, 'right');
  });
}

function cautionSlab(pen: Pen, caution: StepBlock['cautions'][number], width: number): Slab {
  const text = pen.set(caution, width - 19, bold);
  return slab(
    text.height,
    (x, y) => {
      cautionSign(pen, x, y - 0.5);
      pen.put(text, x + 19, y);
    },
    { space: 3 },
  );
}

/** Boxes in a row behind their label, in as many lines as they need. */
function checksSlab(pen: Pen, label: string, items: readonly string[], width: number): Slab {
  const lead = label === '' ? 0 : pen.widthOf(`${label}: `, bold) + 5;
  const height = leading(bodySize) + 2;
  const places: { readonly text: string; readonly x: number; readonly row: number }[] = [];
  let x = lead;
  let row = 0;
  for (const text of items) {
    const wide = pen.widthOf(text, body) + 4 + boxSize;
    if (x > lead && x + wide > width) {
      x = lead;
      row += 1;
    }
    places.push({ text, x, row });
    x += wide + 15;
  }
  return slab(
    height * (row + 1),
    (left, y) => {
      if (label !== '') pen.label(`${label}:`, left, y + bodySize * 0.95, bold);
      for (const place of places) {
        const top = y + place.row * height;
        pen.label(place.text, left + place.x, top + bodySize * 0.95, body);
        tickBox(pen, left + place.x + pen.widthOf(place.text, body) + 4, top + 1);
      }
    },
    { space: 3 },
  );
}

function lineSlabs(pen: Pen, lines: readonly StepLine[], width: number): readonly Slab[] {
  const slabs: Slab[] = [];
  for (let n = 0; n < lines.length; n++) {
    const line = lines[n]!;
    if (line.kind === 'reading') {
      const next = lines.findIndex((one, at) => at > n && one.kind !== 'reading');
      const together = lines.slice(n, next === -1 ? undefined : next).filter((one) => one.kind === 'reading');
      slabs.push(...readingSlabs(pen, together, width));
      n += together.length - 1;
    } else if (line.kind === 'checks') slabs.push(checksSlab(pen, line.label, line.items, width));
    else {
      const label = line.label === '' ? [] : [strong(`${line.label}: `)];
      const text = pen.set([...label, ...line.value], width, body);
      slabs.push(slab(text.height, (x, y) => pen.put(text, x, y), { space: 3 }));
    }
  }
  return slabs;
}

const shifted = (one: Slab, by: number): Slab => ({ ...one, draw: (x, y) => one.draw(x + by, y) });

/** A step: its sentence, cautions, lines and what to do if it fails, as one slab that no page's end parts. */
export function stepSlab(pen: Pen, step: StepBlock, width: number): Slab {
  const room = width - textAt;
  const fails =
    step.fails === null ? [] : lineSlabs(pen, [{ kind: 'text', label: 'Fails', value: step.fails.text }], room);
  const under = [
    ...step.cautions.map((caution) => cautionSlab(pen, caution, room)),
    ...lineSlabs(pen, step.lines, room),
    ...fails,
  ].map((one) => shifted(one, textAt));
  const top = slab(4, (x, y) => ruleLine(pen, x, y, width, 0.4));
  const bottom = slab(4, () => undefined);
  return stacked([top, sentenceSlab(pen, step, width), ...under, bottom]);
}
