import { textSize } from './box';
import type { FillPattern, Graph, Mark, PartState, Series } from './graph';
import { patterned } from './pattern';
import { label, line, type Shape } from './shape';
import { bowTie, crossedBox, drawMark } from './sign';
import { strokeOf, thin } from './stroke';
import { textWidth } from './width';

interface Item {
  readonly text: string;
  readonly draw: (x: number, axis: number) => readonly Shape[];
}

const sample = 26;
const itemGap = 16;
export const legendRow = 15;

const stateWords: Readonly<Record<PartState, string>> = {
  kept: 'kept',
  new: 'new',
  added: '+ new, nothing stood there before',
  removed: 'removed',
  reused: 'taken out and put back',
};

const markWords: Readonly<Record<Mark['what'], string>> = {
  near: 'near end',
  far: 'far end',
  'solvent-in': 'solvent goes in',
  'solvent-out': 'solvent comes out',
  open: 'open end',
  capped: 'capped end',
};

interface Used {
  readonly states: Set<PartState>;
  readonly marks: Set<Mark['what']>;
  readonly patterns: Set<FillPattern>;
  shut: boolean;
  neverFlush: boolean;
}

function gather(series: Series, used: Used): void {
  for (const piece of series) {
    if (piece.kind === 'parallel') for (const branch of piece.branches) gather(branch.series, used);
    if (piece.kind !== 'part') continue;
    used.states.add(piece.state);
    for (const mark of piece.marks) used.marks.add(mark.what);
    if (piece.fill !== null) used.patterns.add(piece.fill);
    used.shut ||= piece.shut;
    used.neverFlush ||= piece.neverFlush;
  }
}

function items(graph: Graph): readonly Item[] {
  const used: Used = { states: new Set(), marks: new Set(), patterns: new Set(), shut: false, neverFlush: false };
  gather(graph.series, used);
  const list: Item[] = [];
  for (const [state, text] of Object.entries(stateWords) as [PartState, string][]) {
    if (!used.states.has(state)) continue;
    const { width, style } = strokeOf(state);
    list.push({
      text,
      draw: (x, axis) => [
        line(
          [
            [x, axis],
            [x + sample, axis],
          ],
          width,
          style,
        ),
      ],
    });
  }
  if (used.shut) list.push({ text: 'valve shut', draw: (x, axis) => bowTie(x + sample / 2, axis, 7, true, thin) });
  if (used.neverFlush) {
    list.push({ text: 'never flush', draw: (x, axis) => crossedBox(x + sample / 2 - 4, axis - 4, 8) });
  }
  for (const [what, text] of Object.entries(markWords) as [Mark['what'], string][]) {
    if (used.marks.has(what)) list.push({ text, draw: (x, axis) => drawMark(what, x + sample / 2, axis, 1) });
  }
  for (const [pattern, text] of Object.entries(graph.patterns) as [FillPattern, string][]) {
    if (!used.patterns.has(pattern)) continue;
    list.push({ text, draw: (x, axis) => patterned(pattern, { x, y: axis - 5, width: sample, height: 10 }) });
  }
  return list;
}

/** What each style and sign of this drawing means; only those in use are told. */
export function drawLegend(graph: Graph, top: number, room: number): { height: number; shapes: readonly Shape[] } {
  const shapes: Shape[] = [];
  let x = 0;
  let axis = top + legendRow / 2;
  for (const item of items(graph)) {
    const width = sample + 4 + textWidth(item.text, textSize);
    if (x > 0 && x + width > room) {
      x = 0;
      axis += legendRow;
    }
    shapes.push(...item.draw(x, axis), label(x + sample + 4, axis + 3.2, item.text, 'start', false, textSize));
    x += width + itemGap;
  }
  return { height: axis + legendRow / 2 - top, shapes };
}
