import type { BarBlock, Block, HeadingBlock, HoldBlock } from '../../engine/procedure/block';
import { strong } from '../../engine/procedure/sentence';
import { drawingSlab } from './drawing';
import { type Slab, slab, stacked } from './flow';
import { frame, ruleLine } from './marks';
import { bodySize, millimetre, noteSize, writingHeight } from './paper';
import type { Pen } from './pen';
import { stepSlab } from './step';
import { tableSlabs } from './table';

const body = { size: bodySize, bold: false };
const bold = { size: bodySize, bold: true };
const note = { size: noteSize, bold: false };
/** What a round's bar at the left takes, and how thick it is. */
const depthWidth = 11;
const depthLine = 2.2;
/** A line to sign on is a little higher than one for a figure. */
const signHeight = 9 * millimetre;

function headingSlab(pen: Pen, heading: HeadingBlock, width: number): Slab {
  const size = heading.level === 1 ? 14 : 11;
  const text = pen.set(heading.text, width, { size, bold: true });
  const more = { keep: true, newPage: heading.newPage, space: heading.level === 1 ? 14 : 9 };
  return slab(
    text.height + (heading.level === 1 ? 5 : 3),
    (x, y) => {
      pen.put(text, x, y);
      if (heading.level === 1) ruleLine(pen, x, y + text.height + 1.5, width, 0.8);
    },
    more,
  );
}

/** Words and lines to write on, side by side; a line's length is its share of what the words leave. */
function signRow(pen: Pen, given: readonly (string | number)[], width: number): Slab {
  const pieces = given.map((one) => (typeof one === 'string' ? pen.fitted(one, width * 0.4, body) : one));
  const words = pieces.reduce<number>((sum, one) => sum + (typeof one === 'string' ? pen.widthOf(one, body) : 0), 0);
  const shares = pieces.reduce<number>((sum, one) => sum + (typeof one === 'number' ? one : 0), 0);
  const room = width - words - 6 * (pieces.length - 1);
  return slab(signHeight, (x, y) => {
    let at = x;
    const base = y + signHeight - 4;
    for (const one of pieces) {
      if (typeof one === 'string') {
        pen.label(one, at, base, body);
        at += pen.widthOf(one, body) + 6;
      } else {
        const length = (room * one) / shares;
        ruleLine(pen, at, base + 1, length);
        at += length + 6;
      }
    }
  });
}

function holdSlab(pen: Pen, hold: HoldBlock, width: number): Slab {
  const inside = width - 18;
  const see = pen.set([strong(`HOLD ${hold.number}: `), ...hold.see], inside, bold);
  const sign = signRow(pen, [`Seen by ${hold.by}`, 5, 'date', 2.4, 'time', 1.8], inside);
  const height = see.height + sign.height + 11;
  return slab(
    height,
    (x, y) => {
      frame(pen, x + 1.1, y + 1.1, width - 2.2, height - 2.2, 2.2);
      pen.put(see, x + 9, y + 6);
      sign.draw(x + 9, y + 5 + see.height);
    },
    { space: 6 },
  );
}

function barSlab(pen: Pen, bar: BarBlock, width: number): Slab {
  if (bar.role === 'repeat-end') {
    const text = pen.set(bar.text, width - depthWidth, note);
    return slab(text.height + 5, (x, y) => {
      pen.put(text, x + depthWidth, y + 1);
      ruleLine(pen, x, y + text.height + 4, width, 0.9);
      pen.path(
        [
          [x + depthLine / 2, y],
          [x + depthLine / 2, y + text.height + 4.4],
        ],
        { width: depthLine },
      );
    });
  }
  if (bar.role === 'repeat') {
    const text = pen.set(bar.text, width - depthWidth - 4, body);
    const height = text.height + 8;
    return slab(
      height,
      (x, y) => {
        frame(pen, x + 0.45, y + 0.45, width - 0.9, height - 0.45, 0.9);
        pen.path(
          [
            [x + depthLine / 2, y],
            [x + depthLine / 2, y + height],
          ],
          { width: depthLine },
        );
        pen.put(text, x + depthWidth, y + 4);
      },
      { space: 7, keep: true },
    );
  }
  const dateWidth = 120;
  const text = pen.set(bar.text, width - dateWidth - 12, body);
  const height = Math.max(signHeight, text.height + 8);
  const date = signRow(pen, ['date', 1], dateWidth);
  return slab(
    height,
    (x, y) => {
      ruleLine(pen, x, y, width, 1.6);
      ruleLine(pen, x, y + height, width, 1.6);
      pen.put(text, x, y + height - 4 - text.height);
      date.draw(x + width - dateWidth, y + height - signHeight - 2);
    },
    { space: 12, keep: true },
  );
}

/** Stands a slab behind the bars of the rounds that it is in. The bar bridges the space above it. */
function behindBars(pen: Pen, one: Slab, depth: number): Slab {
  if (depth === 0) return one;
  return {
    ...one,
    parts: one.parts.map((part) => behindBars(pen, part, depth)),
    draw: (x, y) => {
      for (let n = 0; n < depth; n++) {
        const at = x + n * depthWidth + depthLine / 2;
        pen.path(
          [
            [at, y - one.space],
            [at, y + one.height],
          ],
          { width: depthLine },
        );
      }
      one.draw(x + depth * depthWidth, y);
    },
  };
}

function slabsOf(pen: Pen, block: Block, width: number, room: number): readonly Slab[] {
  switch (block.kind) {
    case 'heading':
      return [headingSlab(pen, block, width)];
    case 'paragraph': {
      const indent = block.indent * 14;
      const text = pen.set(block.text, width - indent, block.small ? note : body);
      return [slab(text.height, (x, y) => pen.put(text, x + indent, y), { space: 2, keep: block.keep })];
    }
    case 'table':
      return tableSlabs(pen, block, width);
    case 'drawing':
      return [drawingSlab(pen, block.drawing, width, room)];
    case 'step':
      return [stepSlab(pen, block, width)];
    case 'hold':
      return [holdSlab(pen, block, width)];
    case 'bar':
      return [barSlab(pen, block, width)];
    case 'ruled':
      return Array.from({ length: block.count }, () =>
        slab(writingHeight, (x, y) => ruleLine(pen, x, y + writingHeight, width)),
      );
    case 'signatures':
      return [stacked(block.roles.map((role) => signRow(pen, [role, 5, 'date', 2], width)))];
  }
}

/** The whole sheet as measured slabs, for a page with `width` by `room` points of clear space. */
export function sheetSlabs(pen: Pen, blocks: readonly Block[], width: number, room: number): readonly Slab[] {
  return blocks.flatMap((block, n) => {
    const depth = 'depth' in block ? block.depth : 0;
    const next = blocks[n + 1];
    // What closes the rounds is never alone at the head of a page.
    const closes = next?.kind === 'bar' && next.role === 'repeat-end';
    const headingRoom = block.kind === 'drawing' ? room - 40 : room;
    return slabsOf(pen, block, width - depth * depthWidth, headingRoom).map((one) => {
      const behind = behindBars(pen, one, depth);
      return closes ? { ...behind, keep: true } : behind;
    });
  });
}
