import type { DrawnPart, DrawnThrough } from './graph';
import { patterned } from './pattern';
import { area, label, line, rectangle, type Shape } from './shape';
import { bowTie, crossedBox, drawMark, drawSign, markWidth, signHalf, signWidth } from './sign';
import { strokeOf, thin } from './stroke';
import { textWidth } from './width';

/**
 * A piece of the drawing with its place still open: how far it reaches along the flow and to both sides of the axis on
 * which the flow comes in, and how far below that axis it goes out.
 */
export interface Box {
  readonly width: number;
  readonly above: number;
  readonly below: number;
  readonly exit: number;
  /** Shapes with the flow going in at (x, axis) to the right. */
  readonly draw: (x: number, axis: number) => readonly Shape[];
}

export const textSize = 9;
const rowHeight = 10.5;
const crossedSize = 8;
/** Clear width beside the widest of sign and texts. */
const clearance = 9;

const shownName = (part: DrawnPart): string => (part.state === 'added' ? `+ ${part.name}` : part.name);

/** One part: sign and leads on the axis, name above, size and caption below, marks at its ends. */
export function partBox(part: DrawnPart): Box {
  const nameWidth = textWidth(shownName(part), textSize, true) + (part.neverFlush ? crossedSize + 3 : 0);
  const lower = [part.size, part.caption].filter((text) => text !== null);
  const inlet = part.marks.filter((mark) => mark.at === 'inlet');
  const outlet = part.marks.filter((mark) => mark.at === 'outlet');
  const shutEnds = part.shut && !part.sign.endsWith('valve');
  const ends = Math.max(inlet.length, outlet.length) * markWidth + (shutEnds ? markWidth : 0);
  const core = signWidth(part.sign);
  const widest = Math.max(nameWidth, core + 2 * ends, ...lower.map((text) => textWidth(text, textSize)));
  const width = widest + clearance;
  const isBareLine = part.sign === 'line' && part.fill === null && part.marks.length === 0;
  const nameLift = isBareLine ? 4 : signHalf + 5;
  const lowerDrop = isBareLine ? 11 : signHalf + 9.5;
  return {
    width,
    above: nameLift + rowHeight,
    below: lower.length === 0 ? signHalf + 2 : lowerDrop + (lower.length - 1) * rowHeight + 4,
    exit: 0,
    draw: (x, axis) => {
      const stroke = strokeOf(part.state);
      const middle = x + width / 2;
      const shapes: Shape[] = [];
      if (part.sign === 'line') {
        if (part.fill !== null) {
          const inside = { x: x + ends + 2, y: axis - 4, width: width - 2 * ends - 4, height: 8 };
          shapes.push(
            line(
              [
                [x, axis],
                [x + width, axis],
              ],
              thin.width,
            ),
          );
          shapes.push(
            area(rectangle(inside.x, inside.y, inside.width, inside.height), 'white', stroke.width, stroke.style),
          );
          shapes.push(...patterned(part.fill, inside));
        } else
          shapes.push(
            line(
              [
                [x, axis],
                [x + width, axis],
              ],
              stroke.width,
              stroke.style,
            ),
          );
      } else {
        shapes.push(
          line(
            [
              [x, axis],
              [middle - core / 2, axis],
            ],
            thin.width,
          ),
        );
        shapes.push(
          line(
            [
              [middle + core / 2, axis],
              [x + width, axis],
            ],
            thin.width,
          ),
        );
        shapes.push(...drawSign(part.sign, middle, axis, part.shut, stroke));
        if (part.fill !== null) {
          shapes.push(
            ...patterned(part.fill, { x: middle - core / 2, y: axis - signHalf, width: core, height: 2 * signHalf }),
          );
        }
      }
      for (const [n, mark] of inlet.entries()) {
        shapes.push(...drawMark(mark.what, x + 1 + markWidth * (n + 0.5), axis, 1));
      }
      for (const [n, mark] of outlet.entries()) {
        shapes.push(...drawMark(mark.what, x + width - 1 - markWidth * (n + 0.5), axis, -1));
      }
      if (shutEnds) {
        shapes.push(
          ...bowTie(middle - core / 2 - 6, axis, 5, true, thin),
          ...bowTie(middle + core / 2 + 6, axis, 5, true, thin),
        );
      }
      const nameAt = middle + (part.neverFlush ? (crossedSize + 3) / 2 : 0);
      shapes.push(label(nameAt, axis - nameLift, shownName(part), 'middle', true, textSize));
      if (part.neverFlush) {
        shapes.push(...crossedBox(middle - nameWidth / 2, axis - nameLift - crossedSize + 1, crossedSize));
      }
      for (const [n, text] of lower.entries()) {
        shapes.push(label(middle, axis + lowerDrop + n * rowHeight, text, 'middle', false, textSize));
      }
      return shapes;
    },
  };
}

/** A part that the flow meets again: a dotted frame with its name in it. */
export function throughBox(through: DrawnThrough): Box {
  const text = textWidth(through.name, textSize, true);
  const width = text + 20;
  return {
    width,
    above: signHalf + 4,
    below: signHalf + 14,
    exit: 0,
    draw: (x, axis) => [
      line(
        [
          [x, axis],
          [x + width, axis],
        ],
        thin.width,
      ),
      area(rectangle(x + 4, axis - signHalf, width - 8, 2 * signHalf), 'white', 0.9, 'dotted'),
      label(x + width / 2, axis + 3.2, through.name, 'middle', true, textSize),
      label(x + width / 2, axis + signHalf + 10, 'met again', 'middle', false, textSize),
    ],
  };
}
