import type { StepBlock } from '../../engine/procedure/block';
import type { StepLine } from '../../engine/procedure/document';
import { strong } from '../../engine/procedure/sentence';
import { type Slab, slab, stacked } from './flow';
import { boxSize, cautionSign, ruleLine, tickBox } from './marks';
import { bodySize } from './paper';
import type { Pen, SetText } from './pen';
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
  const head = pen.set(label === '' ? '' : `${label}:`, width * 0.45, bold);
  const lead = label === '' ? 0 : Math.max(...head.lines.map((line) => line.width)) + 8;
  const gap = 4;
  const places: { readonly text: SetText; readonly wide: number; readonly x: number; readonly y: number }[] = [];
  let x = lead;
  let y = 0;
  let deepest = 0;
  for (const item of items) {
    const text = pen.set(item, width - lead - gap - boxSize, body);
    const wide = Math.max(...text.lines.map((line) => line.width));
    if (x > lead && x + wide + gap + boxSize > width) {
      x = lead;
      y += deepest + 2;
      deepest = 0;
    }
    places.push({ text, wide, x, y });
    deepest = Math.max(deepest, text.height);
    x += wide + gap + boxSize + 15;
  }
  return slab(
    Math.max(head.height, y + deepest) + 2,
    (left, top) => {
      pen.put(head, left, top);
      for (const place of places) {
        pen.put(place.text, left + place.x, top + place.y);
        tickBox(pen, left + place.x + place.wide + gap, top + place.y + 1);
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
