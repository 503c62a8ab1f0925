import type { FillPattern } from './graph';
import { area, line, type Shape } from './shape';

type Rectangle = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** Lines at 45 degrees over a rectangle, cut at its sides. `rising` ones go up to the right. */
function slanted({ x, y, width, height }: Rectangle, spacing: number, rising: boolean): Shape[] {
  const lines: Shape[] = [];
  for (let start = -height + spacing / 2; start < width; start += spacing) {
    const from = Math.max(0, start);
    const to = Math.min(width, start + height);
    if (to - from < 0.5) continue;
    const depth = (along: number) => (rising ? height - (along - start) : along - start);
    lines.push(
      line(
        [
          [x + from, y + depth(from)],
          [x + to, y + depth(to)],
        ],
        0.6,
      ),
    );
  }
  return lines;
}

function dots({ x, y, width, height }: Rectangle): Shape[] {
  const shapes: Shape[] = [];
  for (let down = 2; down < height; down += 4) {
    for (let across = 2 + (down % 8 === 2 ? 0 : 2); across < width; across += 4) {
      shapes.push({
        kind: 'circle',
        x: x + across,
        y: y + down,
        radius: 0.55,
        width: 0,
        style: 'solid',
        fill: 'black',
      });
    }
  }
  return shapes;
}

function levels({ x, y, width, height }: Rectangle): Shape[] {
  const shapes: Shape[] = [];
  for (let down = 2; down < height; down += 3) {
    shapes.push(
      line(
        [
          [x, y + down],
          [x + width, y + down],
        ],
        0.6,
      ),
    );
  }
  return shapes;
}

/** A pattern over a rectangle, frame included, made of plain strokes so that every printer shows the same. */
export function patterned(pattern: FillPattern, rectangle: Rectangle): readonly Shape[] {
  const { x, y, width, height } = rectangle;
  const frame = area(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    'none',
    0.4,
  );
  switch (pattern) {
    case 'hatch':
      return [...slanted(rectangle, 5, true), frame];
    case 'back-hatch':
      return [...slanted(rectangle, 5, false), frame];
    case 'cross-hatch':
      return [...slanted(rectangle, 5, true), ...slanted(rectangle, 5, false), frame];
    case 'dots':
      return [...dots(rectangle), frame];
    case 'level':
      return [...levels(rectangle), frame];
  }
}
