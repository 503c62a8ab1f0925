import { type Box, partBox, textSize, throughBox } from './box';
import type { DrawnParallel, Piece, Series } from './graph';
import { label, line, type Shape } from './shape';
import { arrow } from './sign';
import { thin } from './stroke';
import { textWidth } from './width';

/** Between two branches, and between two rows of one line of flow. */
const branchGap = 3;
/** What a split and a join take on either side. */
const busWidth = 9;
const turnWidth = 8;
const turnGap = 8;
/** Deeper nesting than any plant has is drawn as a plain box with its depth told in words. */
const deepest = 12;

function pieceBox(piece: Piece, room: number, depth: number): Box {
  if (piece.kind === 'part') return partBox(piece);
  if (piece.kind === 'through') return throughBox(piece);
  if (depth >= deepest) return throughBox({ kind: 'through', name: 'nested deeper' });
  return parallelBox(piece, room, depth + 1);
}

/** Where each row begins, filled from the front: at least one piece a row. */
function filled(boxes: readonly Box[], room: number): readonly (readonly Box[])[] {
  const rows: Box[][] = [];
  let used = 0;
  for (const box of boxes) {
    const row = rows.at(-1);
    if (row === undefined || used + box.width > room) {
      rows.push([box]);
      used = box.width;
    } else {
      row.push(box);
      used += box.width;
    }
  }
  return rows;
}

export interface Row {
  readonly boxes: readonly Box[];
  readonly width: number;
  readonly above: number;
  readonly below: number;
}

/** The pieces of one row on a common axis; a piece that leaves lower than it came in is led back up to the axis. */
export function rowOf(boxes: readonly Box[]): Row {
  return {
    boxes,
    width: boxes.reduce((sum, box) => sum + box.width, 0),
    above: Math.max(0, ...boxes.map((box) => box.above)),
    below: Math.max(0, ...boxes.map((box) => box.below)),
  };
}

/** A row drawn over `width`, the slack shared out before, between and behind its pieces. */
export function drawRow(row: Row, x: number, axis: number, width: number): readonly Shape[] {
  const slack = Math.max(0, width - row.width) / (row.boxes.length + 1);
  const shapes: Shape[] = [];
  let at = x;
  const lead = () => {
    if (slack > 0.1)
      shapes.push(
        line(
          [
            [at, axis],
            [at + slack, axis],
          ],
          thin.width,
        ),
      );
    if (slack > 9) shapes.push(arrow(at + slack / 2 + 3.5, axis, 'right'));
    at += slack;
  };
  for (const box of row.boxes) {
    lead();
    shapes.push(...box.draw(at, axis));
    at += box.width;
  }
  lead();
  return shapes;
}

/** A branch's line of flow, broken into rows where it is longer than the room; all rows run left to right. */
function seriesBox(series: Series, room: number, depth: number): Box {
  const boxes = series.map((piece) => pieceBox(piece, room, depth));
  const narrow = filled(boxes, room);
  const rows = (narrow.length <= 1 ? narrow : filled(boxes, room - 2 * turnWidth)).map(rowOf);
  if (rows.length === 0) return { width: 12, above: 4, below: 4, exit: 0, draw: () => [] };
  const inner = Math.max(...rows.map((row) => row.width));
  const side = rows.length === 1 ? 0 : turnWidth;
  const axes = [0];
  for (let n = 1; n < rows.length; n++) axes.push(axes[n - 1]! + rows[n - 1]!.below + turnGap + rows[n]!.above);
  const exit = axes.at(-1)!;
  return {
    width: inner + 2 * side,
    above: rows[0]!.above,
    below: exit + rows.at(-1)!.below,
    exit,
    draw: (x, axis) =>
      rows.flatMap((row, n) => {
        const at = axis + axes[n]!;
        const shapes = [...drawRow(row, x + side, at, inner)];
        if (side > 0 && n === 0)
          shapes.push(
            line(
              [
                [x, at],
                [x + side, at],
              ],
              thin.width,
            ),
          );
        if (side > 0 && n === rows.length - 1) {
          shapes.push(
            line(
              [
                [x + side + inner, at],
                [x + inner + 2 * side, at],
              ],
              thin.width,
            ),
          );
        }
        if (n < rows.length - 1) {
          const turn = at + row.below + turnGap / 2;
          const next = axis + axes[n + 1]!;
          const right = x + inner + 2 * side - 3;
          const left = x + 3;
          shapes.push(
            line(
              [
                [x + side + inner, at],
                [right, at],
                [right, turn],
                [left, turn],
                [left, next],
                [x + side, next],
              ],
              thin.width,
            ),
            arrow((left + right) / 2, turn, 'left'),
          );
        }
        return shapes;
      }),
  };
}

/** Branches one under the other between a split on the left and a join on the right. */
function parallelBox(parallel: DrawnParallel, room: number, depth: number): Box {
  const named = Math.max(0, ...parallel.branches.map((branch) => textWidth(branch.name, textSize)));
  const lead = named === 0 ? 12 : named + 8;
  const branches = parallel.branches.map((branch) => ({
    name: branch.name,
    box: seriesBox(branch.series, Math.max(60, room - 2 * busWidth - lead), depth),
  }));
  if (branches.length === 0) return { width: 12, above: 4, below: 4, exit: 0, draw: () => [] };
  const inner = Math.max(...branches.map((branch) => branch.box.width));
  const aboves = branches.map((branch) => Math.max(branch.box.above, branch.name === '' ? 0 : 13));
  const axes = [0];
  for (let n = 1; n < branches.length; n++) {
    axes.push(axes[n - 1]! + branches[n - 1]!.box.below + branchGap + aboves[n]!);
  }
  const width = inner + lead + 2 * busWidth;
  return {
    width,
    above: aboves[0]!,
    below: axes.at(-1)! + branches.at(-1)!.box.below,
    exit: 0,
    draw: (x, axis) => {
      const split = x + busWidth;
      const join = x + width - busWidth;
      const shapes: Shape[] = [
        line(
          [
            [x, axis],
            [split, axis],
          ],
          thin.width,
        ),
        line(
          [
            [split, axis],
            [split, axis + axes.at(-1)!],
          ],
          thin.width,
        ),
        line(
          [
            [join, axis],
            [x + width, axis],
          ],
          thin.width,
        ),
        line(
          [
            [join, axis],
            [join, axis + axes.at(-1)! + branches.at(-1)!.box.exit],
          ],
          thin.width,
        ),
      ];
      for (const [n, branch] of branches.entries()) {
        const at = axis + axes[n]!;
        const slack = (inner - branch.box.width) / 2;
        const start = split + lead + slack;
        const end = start + branch.box.width;
        const out = at + branch.box.exit;
        shapes.push(
          line(
            [
              [split, at],
              [start, at],
            ],
            thin.width,
          ),
          line(
            [
              [end, out],
              [join, out],
            ],
            thin.width,
          ),
        );
        shapes.push(
          arrow(split + lead - 1, at, 'right'),
          label(split + 3, at - 4, branch.name, 'start', false, textSize),
        );
        shapes.push(...branch.box.draw(start, at));
      }
      return shapes;
    },
  };
}

/** The boxes of the main line of flow, none of them wider than `room` as far as names allow. */
export const boxesOf = (series: Series, room: number): readonly Box[] =>
  series.map((piece) => pieceBox(piece, room, 0));
