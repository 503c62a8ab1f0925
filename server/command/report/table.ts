/** Rows of cells as columns with two blanks between; a column of nothing but blanks is left out. The first row is the head. */
export function table(rows: readonly (readonly string[])[], indent = ''): readonly string[] {
  const columns = (rows[0] ?? [])
    .map((_, column) => column)
    .filter((column) => rows.slice(1).some((row) => (row[column] ?? '') !== ''));
  const widths = columns.map((column) => Math.max(...rows.map((row) => width(row[column] ?? ''))));
  return rows.map((row) =>
    `${indent}${columns.map((column, k) => (row[column] ?? '') + ' '.repeat(widths[k]! - width(row[column] ?? ''))).join('  ')}`.trimEnd(),
  );
}

const width = (text: string): number => [...text].length;
