import type { Cell, TableBlock } from '../block';
import { plainText, sentence } from '../sentence';
import { broken, clean, columns, inColumns, padded } from './compose';

const gap = 2;
const boxWidth = 3;

function cellLines(cell: Cell, width: number): readonly string[] {
  if (cell.kind === 'box') return ['[ ]'];
  if (cell.kind === 'text') return broken(cell.text, width);
  const unit = cell.unit === '' ? '' : ` ${cell.unit}`;
  return ['_'.repeat(Math.max(6, Math.min(24, width - inColumns(unit, 'plain')))) + unit];
}

/** Width of each column: boxes take three signs, the others share what is left, none wider than it needs. */
function widthsOf(table: TableBlock): readonly number[] {
  const shares = table.columns.reduce((sum, column) => sum + column.share, 0);
  const fixed = table.columns.filter((column) => column.share === 0).length * boxWidth;
  const room = columns - fixed - gap * (table.columns.length - 1);
  return table.columns.map((column) =>
    column.share === 0 ? boxWidth : Math.max(4, Math.floor((room * column.share) / shares)),
  );
}

function rowLines(cells: readonly (readonly string[])[], table: TableBlock, widths: readonly number[]): string[] {
  const height = Math.max(1, ...cells.map((lines) => lines.length));
  return Array.from({ length: height }, (_, n) =>
    clean(
      cells
        .map((lines, c) => padded(lines[n] ?? '', widths[c]!, table.columns[c]?.align ?? 'left'))
        .join(' '.repeat(gap)),
    ),
  );
}

/** The head of a table (empty if it has none) and its rows, each a group of lines that stays together. */
export function tableText(table: TableBlock): { head: readonly string[]; rows: readonly (readonly string[])[] } {
  const widths = widthsOf(table);
  const titled = table.columns.some((column) => column.title !== '');
  const head = titled
    ? [
        ...rowLines(
          table.columns.map((column, n) => broken(plainText(sentence(column.title)), widths[n]!)),
          table,
          widths,
        ),
        '-'.repeat(columns),
      ]
    : [];
  return {
    head,
    rows: table.rows.map((row) =>
      rowLines(
        row.map((cell, n) => cellLines(cell, widths[n]!)),
        table,
        widths,
      ),
    ),
  };
}
