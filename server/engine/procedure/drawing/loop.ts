import type { Box } from './box';
import type { Series } from './graph';
import { boxesOf, drawRow, type Row, rowOf } from './layout';
import { line, type Shape } from './shape';
import { arrow } from './sign';
import { thin } from './stroke';

/** Room at either side for the line that leads from row to row. */
const side = 12;
/** Where those lines run: clear of the edge by the half of an arrow's head, the way back outside of the others. */
const outer = 3.5;
const innerTrack = 9;
const rowGap = 6;
/** How many points of height an empty row would be worth: rows of like length read better than the lowest drawing. */
const evenness = 150;

/** The same shapes with left and right changed about the middle of `width`; texts stay readable. */
function mirrored(shapes: readonly Shape[], width: number): readonly Shape[] {
  return shapes.map((shape): Shape => {
    if (shape.kind === 'path') return { ...shape, points: shape.points.map(([x, y]) => [width - x, y] as const) };
    if (shape.kind === 'circle') return { ...shape, x: width - shape.x };
    const anchor = shape.anchor === 'start' ? 'end' : shape.anchor === 'end' ? 'start' : 'middle';
    return { ...shape, x: width - shape.x, anchor };
  });
}

/**
 * Breaks the loop into rows so that the drawing is as low as may be; among equally low ones the most even. At least
 * two rows where there are two pieces, so that the loop can be seen to close; an even number ends at the side where
 * it began.
 */
function broken(boxes: readonly Box[], room: number): readonly Row[] {
  interface Best {
    readonly cost: number;
    readonly rows: readonly Row[];
  }
  // For each end and each parity of the number of rows, the best way to come there.
  const best: (Best | null)[][] = [[{ cost: 0, rows: [] }, null]];
  for (let end = 1; end <= boxes.length; end++) {
    best[end] = [null, null];
    for (let start = end - 1; start >= 0; start--) {
      const row = rowOf(boxes.slice(start, end));
      if (row.width > room && end - start > 1) break;
      const slack = Math.max(0, room - row.width) / room;
      const cost = row.above + row.below + rowGap + evenness * slack * slack;
      for (const parity of [0, 1] as const) {
        const before = best[start]![parity]!;
        if (before === null) continue;
        const next = parity === 0 ? 1 : 0;
        const total = before.cost + cost;
        const known = best[end]![next]!;
        if (known === null || total < known.cost) best[end]![next] = { cost: total, rows: [...before.rows, row] };
      }
    }
  }
  const [even, odd] = best[boxes.length]!;
  if (even == null) return odd?.rows ?? [];
  if (odd == null || odd.rows.length < 2) return even.rows;
  return even.cost <= odd.cost + 2 * rowGap ? even.rows : odd.rows;
}

export interface Loop {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
}

/** The main loop: rows to the right and to the left in turn, and the way back to the first up the left side. */
export function drawLoop(series: Series, room: number): Loop {
  const inner = room - 2 * side;
  const rows = broken(boxesOf(series, inner), inner);
  const width = Math.max(inner, ...rows.map((row) => row.width));
  const full = width + 2 * side;
  const shapes: Shape[] = [];
  const axes: number[] = [];
  let top = 0;
  for (const [n, row] of rows.entries()) {
    const axis = top + row.above;
    axes.push(axis);
    const drawn = drawRow(row, side, axis, width);
    shapes.push(...(n % 2 === 0 ? drawn : mirrored(drawn, full)));
    top += row.above + row.below + rowGap;
  }
  for (let n = 0; n + 1 < rows.length; n++) {
    const rightSide = n % 2 === 0;
    const out = rightSide ? full - outer : innerTrack;
    const end = rightSide ? side + width : side;
    shapes.push(
      line(
        [
          [end, axes[n]!],
          [out, axes[n]!],
          [out, axes[n + 1]!],
          [end, axes[n + 1]!],
        ],
        thin.width,
      ),
    );
    shapes.push(arrow(out, (axes[n]! + axes[n + 1]!) / 2 + 3, 'down'));
  }
  if (rows.length > 0) {
    const first = axes[0]!;
    const last = axes.at(-1)!;
    const endsRight = rows.length % 2 === 1;
    const way: readonly (readonly [number, number])[] = endsRight
      ? [
          [side + width, last],
          [full - outer, last],
          [full - outer, top],
          [outer, top],
          [outer, first],
          [side, first],
        ]
      : [
          [side, last],
          [outer, last],
          [outer, first],
          [side, first],
        ];
    shapes.push(line(way, thin.width), arrow(outer, (first + (endsRight ? top : last)) / 2 - 3, 'up'));
    if (endsRight) top += rowGap;
  }
  return { width: full, height: top, shapes };
}
