import type { DrawnPart, Graph, Mark, Series } from './graph';

const markWords: Readonly<Record<Mark['what'], string>> = {
  near: 'near end',
  far: 'far end',
  'solvent-in': 'solvent goes in',
  'solvent-out': 'solvent comes out',
  open: 'open',
  capped: 'capped',
};

function partWords(part: DrawnPart): string {
  const words: string[] = [part.state];
  if (part.size !== null) words.push(part.size);
  if (part.shut) words.push(part.sign.endsWith('valve') ? 'shut' : 'valves shut');
  if (part.neverFlush) words.push('never flush');
  for (const at of ['inlet', 'outlet'] as const) {
    const marks = part.marks.filter((mark) => mark.at === at).map((mark) => markWords[mark.what]);
    if (marks.length > 0) words.push(`${at}: ${marks.join(', ')}`);
  }
  if (part.caption !== null) words.push(part.caption);
  return `${part.neverFlush ? '[X] ' : ''}${part.name}: ${words.join('; ')}`;
}

function seriesWords(series: Series, indent: string, lines: string[]): void {
  for (const piece of series) {
    if (piece.kind === 'part') lines.push(`${indent}-> ${partWords(piece)}`);
    else if (piece.kind === 'through') lines.push(`${indent}-> ${piece.name} again`);
    else {
      lines.push(`${indent}-> splits in ${piece.branches.length}`);
      for (const branch of piece.branches) {
        lines.push(`${indent}   branch ${branch.name}`);
        if (indent.length < 60) seriesWords(branch.series, `${indent}   `, lines);
        else lines.push(`${indent}   nested deeper`);
      }
      lines.push(`${indent}   joins`);
    }
  }
}

/** The circuit in words, a part a line, in flow order; it closes on its first line. */
export function circuitInWords(graph: Graph): readonly string[] {
  const lines: string[] = [];
  seriesWords(graph.series, '', lines);
  if (lines.length > 0) lines.push('-> back to the first');
  return lines;
}
