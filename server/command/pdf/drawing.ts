import { type Drawing, dashes } from '../../engine/procedure/drawing/shape';
import { type Slab, slab } from './flow';
import type { Pen } from './pen';

/** The circuit drawing at its own size, made smaller only where the page can't hold it. */
export function drawingSlab(pen: Pen, drawing: Drawing, width: number, room: number): Slab {
  const scale = Math.min(1, width / drawing.width, room / drawing.height);
  return slab(
    drawing.height * scale,
    (x, y) =>
      pen.scaled(x, y, scale, () => {
        for (const shape of drawing.shapes) {
          if (shape.kind === 'text') {
            pen.label(shape.text, shape.x, shape.y, { size: shape.size, bold: shape.bold }, shape.anchor);
          } else if (shape.kind === 'circle') {
            const { width: line, style, fill } = shape;
            pen.circle(shape.x, shape.y, shape.radius, { width: line, dash: dashes(style), fill });
          } else {
            const { closed, width: line, style, fill } = shape;
            pen.path(shape.points, { closed, width: line, dash: dashes(style), fill });
          }
        }
      }),
    { space: 4 },
  );
}
