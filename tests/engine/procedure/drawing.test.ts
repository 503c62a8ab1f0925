import { describe, expect, test } from 'vitest';
import { drawCircuit, drawingWidth } from '../../../server/engine/procedure/drawing/draw';
import {
  type DrawnPart,
  drawnPart,
  type FillPattern,
  type Graph,
  type Piece,
  type Series,
  signOf,
} from '../../../server/engine/procedure/drawing/graph';
import type { Drawing, Shape } from '../../../server/engine/procedure/drawing/shape';
import { textWidth } from '../../../server/engine/procedure/drawing/width';
import { nestedGraph, rackGraph, splitGraph } from './graphs';

type Text = Extract<Shape, { kind: 'text' }>;
const textsOf = (drawing: Drawing): readonly Text[] =>
  drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');

function partsOf(series: Series): readonly DrawnPart[] {
  return series.flatMap((piece) => {
    if (piece.kind === 'part') return [piece];
    return piece.kind === 'parallel' ? piece.branches.flatMap((branch) => partsOf(branch.series)) : [];
  });
}

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function extent(shape: Shape): Extent {
  if (shape.kind === 'path') {
    const xs = shape.points.map(([x]) => x);
    const ys = shape.points.map(([, y]) => y);
    return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
  }
  if (shape.kind === 'circle') {
    const { x, y, radius } = shape;
    return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
  }
  const width = textWidth(shape.text, shape.size, shape.bold);
  const left = shape.anchor === 'start' ? shape.x : shape.anchor === 'end' ? shape.x - width : shape.x - width / 2;
  return { left, right: left + width, top: shape.y - shape.size * 0.72, bottom: shape.y + shape.size * 0.18 };
}

const meet = (one: Extent, other: Extent): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const graphs: readonly (readonly [string, Graph])[] = [
  ['a split', splitGraph],
  ['a rack with a double riser', rackGraph],
  ['three zones with double risers behind a branch box', nestedGraph],
];

describe.each(graphs)('%s', (_name, graph) => {
  const drawing = drawCircuit(graph);
  const texts = textsOf(drawing);

  test('stays within the width of the paper and its own height', () => {
    expect(drawing.width).toBe(drawingWidth);
    for (const shape of drawing.shapes) {
      const { left, right, top, bottom } = extent(shape);
      expect(left).toBeGreaterThanOrEqual(-0.01);
      expect(right).toBeLessThanOrEqual(drawing.width + 0.01);
      expect(top).toBeGreaterThanOrEqual(-0.01);
      expect(bottom).toBeLessThanOrEqual(drawing.height + 0.01);
    }
  });

  test('every part is named once, with its size, in the drawing and in words', () => {
    for (const part of partsOf(graph.series)) {
      const shown = part.state === 'added' ? `+ ${part.name}` : part.name;
      const again = graph.series.filter((piece) => piece.kind === 'through' && piece.name === part.name).length;
      expect(texts.filter((text) => text.text === shown).length, part.name).toBe(1 + again);
      if (part.size !== null) expect(texts.map((text) => text.text)).toContain(part.size);
      expect(drawing.listing.filter((line) => line.includes(`${part.name}: ${part.state}`)).length).toBe(1);
    }
  });

  test('no two texts touch, and none is under 9 pt', () => {
    for (const [n, one] of texts.entries()) {
      expect(one.size).toBeGreaterThanOrEqual(9);
      for (const other of texts.slice(n + 1)) {
        expect(meet(extent(one), extent(other)), `${one.text} meets ${other.text}`).toBe(false);
      }
    }
  });

  test('a crossed box for each part that must not be flushed', () => {
    const crossed = partsOf(graph.series).filter((part) => part.neverFlush).length;
    // Two diagonals of 8 points each, and one pair in the legend.
    const diagonals = drawing.shapes.filter(
      (shape) =>
        shape.kind === 'path' &&
        shape.points.length === 2 &&
        shape.width === 1 &&
        Math.abs(Math.abs(shape.points[0]![0] - shape.points[1]![0]) - 8) < 0.01 &&
        Math.abs(Math.abs(shape.points[0]![1] - shape.points[1]![1]) - 8) < 0.01,
    ).length;
    expect(diagonals).toBe(2 * (crossed + 1));
  });
});

test('the rack takes little more than half a page, the split far less', () => {
  // Letter between 15 mm margins, less head and foot, leaves about 600 points.
  expect(drawCircuit(rackGraph).height).toBeLessThan(450);
  expect(drawCircuit(splitGraph).height).toBeLessThan(150);
});

const one = (more: Partial<DrawnPart>): Drawing =>
  drawCircuit({ series: [drawnPart('line-x', 'line', more), drawnPart('coil-x', 'coil')], patterns: {} });

describe('what a style says', () => {
  test.each([
    ['kept', 'solid', 0.9],
    ['new', 'solid', 2.4],
    ['added', 'solid', 2.4],
    ['removed', 'dashed', 1.2],
    ['reused', 'dash-dot', 1.6],
  ] as const)('%s is drawn %s, %s wide, and told in the legend', (state, style, width) => {
    const drawing = one({ state });
    const lines = drawing.shapes.filter(
      (shape) => shape.kind === 'path' && shape.style === style && shape.width === width,
    );
    expect(lines.length).toBeGreaterThanOrEqual(2);
  });

  test('a shut valve is black, an open one white', () => {
    const valve = (shut: boolean) =>
      drawCircuit({ series: [drawnPart('v', 'valve', { shut }), drawnPart('c', 'box')], patterns: {} });
    const triangles = (drawing: Drawing, fill: string) =>
      drawing.shapes.filter(
        (s) => s.kind === 'path' && s.closed && s.points.length === 3 && s.width === 0.9 && s.fill === fill,
      );
    expect(triangles(valve(true), 'white').length).toBe(0);
    expect(triangles(valve(true), 'black').length).toBe(4); // the valve and the legend's
    expect(triangles(valve(false), 'white').length).toBe(2);
    expect(valve(true).listing[0]).toBe('-> v: kept; shut');
  });

  test('each pattern looks different and is told in the legend', () => {
    const patterns: readonly FillPattern[] = ['hatch', 'back-hatch', 'cross-hatch', 'dots', 'level'];
    const seen = patterns.map((fill) => {
      const graph = { series: [drawnPart('x', 'vessel', { fill })], patterns: { [fill]: `meaning of ${fill}` } };
      const drawing = drawCircuit(graph);
      expect(textsOf(drawing).map((text) => text.text)).toContain(`meaning of ${fill}`);
      return JSON.stringify(drawing.shapes.filter((shape) => shape.kind !== 'text'));
    });
    expect(new Set(seen).size).toBe(patterns.length);
  });
});

describe('odd circuits', () => {
  const nested = (depth: number): Piece =>
    depth === 0
      ? drawnPart('inmost', 'valve')
      : {
          kind: 'parallel',
          branches: [
            { name: 'a', series: [nested(depth - 1)] },
            { name: 'b', series: [] },
          ],
        };
  test.each<[string, Series]>([
    ['nothing', []],
    ['one part', [drawnPart('only', 'compressor')]],
    ['a split without branches', [{ kind: 'parallel', branches: [] }]],
    ['a very long name', [drawnPart('n'.repeat(300), 'line'), drawnPart('b', 'box')]],
    ['fifty nested splits', [nested(50)]],
    ['two thousand parts', Array.from({ length: 2000 }, (_, n) => drawnPart(`part-${n}`, 'valve'))],
  ])('%s is drawn', (_name, series) => {
    const drawing = drawCircuit({ series, patterns: {} });
    expect(Number.isFinite(drawing.width) && Number.isFinite(drawing.height)).toBe(true);
    for (const shape of drawing.shapes) {
      const { left, right, top, bottom } = extent(shape);
      expect([left, right, top, bottom].every(Number.isFinite)).toBe(true);
      expect(right).toBeLessThanOrEqual(drawing.width + 0.01);
    }
  });
});

test.each([
  ['suction-line', 'line'],
  ['hot-gas-line', 'line'],
  ['compressor', 'compressor'],
  ['electronic-expansion-valve', 'expansion-valve'],
  ['constructor', 'box'],
  ['branch-box', 'box'],
] as const)('%s is drawn as %s', (kind, sign) => expect(signOf(kind)).toBe(sign));
