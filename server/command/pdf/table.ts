import type { Cell, TableBlock } from '../../engine/procedure/block';
import { keepsNext } from '../../engine/procedure/outline';
import { type Slab, slab } from './flow';
import { boxSize, ruleLine, tickBox } from './marks';
import { bodySize, noteSize, writingHeight } from './paper';
import type { Pen, SetText } from './pen';

const gap = 7;
const boxColumn = boxSize + 9;
const rowPadding = 2.5;

function widthsOf(table: TableBlock, width: number): readonly number[] {
  const shares = table.columns.reduce((sum, column) => sum + column.share, 0);
  const boxes = table.columns.filter((column) => column.share === 0).length;
  const room = width - boxes * boxColumn;
  return table.columns.map((column) => (column.share === 0 ? boxColumn : (room * column.share) / shares));
}

function headOf(pen: Pen, table: TableBlock, widths: readonly number[], width: number): Slab | null {
  if (table.columns.every((column) => column.title === '')) return null;
  const titles = table.columns.map((column, n) =>
    pen.set(column.title, widths[n]! - gap, { size: noteSize, bold: true }),
  );
  const height = Math.max(...titles.map((title) => title.height)) + 2;
  return slab(
    height,
    (x, y) => {
      let at = x;
      for (const [n, title] of titles.entries()) {
        pen.put(title, at, y + height - 2 - title.height, table.columns[n]!.align);
        at += widths[n]!;
      }
      ruleLine(pen, x, y + height, width, 0.8);
    },
    { keep: true },
  );
}

function rowOf(pen: Pen, table: TableBlock, cells: readonly Cell[], widths: readonly number[], width: number): Slab {
  const set = cells.map((cell, n): SetText | null =>
    cell.kind === 'text' ? pen.set(cell.text, widths[n]! - gap, { size: bodySize, bold: false }) : null,
  );
  const texts = Math.max(bodySize * 1.24, ...set.map((one) => one?.height ?? 0)) + 2 * rowPadding;
  const height = cells.some((cell) => cell.kind === 'write') ? Math.max(texts, writingHeight) : texts;
  return slab(height, (x, y) => {
    let at = x;
    for (const [n, cell] of cells.entries()) {
      const text = set[n];
      if (text != null) pen.put(text, at, y + rowPadding, table.columns[n]?.align ?? 'left');
      if (cell.kind === 'box') tickBox(pen, at, y + rowPadding + 1);
      if (cell.kind === 'write') {
        pen.path(
          [
            [at - 3, y],
            [at - 3, y + height],
          ],
          { width: 0.4 },
        );
        const unit = pen.fitted(cell.unit, widths[n]! - gap - 4, { size: noteSize, bold: false });
        pen.label(unit, at + widths[n]! - gap, y + height - 4, { size: noteSize, bold: false }, 'end');
      }
      at += widths[n]!;
    }
    ruleLine(pen, x, y + height, width, 0.4);
  });
}

/** A table as its head and a slab for each row; the head comes again on each further page. */
export function tableSlabs(pen: Pen, table: TableBlock, width: number): readonly Slab[] {
  const widths = widthsOf(table, width);
  const head = headOf(pen, table, widths, width);
  const rows = table.rows.map((row, n) => ({
    ...rowOf(pen, table, row, widths, width),
    header: head,
    keep: keepsNext(n, table.rows.length),
  }));
  return head === null ? rows : [head, ...rows];
}
