import type { Pen } from './pen';

export const boxSize = 10;

/** A box to tick with its top left at (x, y). */
export function tickBox(pen: Pen, x: number, y: number): void {
  pen.path(
    [
      [x, y],
      [x + boxSize, y],
      [x + boxSize, y + boxSize],
      [x, y + boxSize],
    ],
    { closed: true, width: 1.1 },
  );
}

/** The triangle of a caution, 13 points wide, with its top left at (x, y). */
export function cautionSign(pen: Pen, x: number, y: number): void {
  pen.path(
    [
      [x + 6.5, y],
      [x + 13, y + 11.3],
      [x, y + 11.3],
    ],
    { closed: true, width: 1.3 },
  );
  pen.path(
    [
      [x + 6.5, y + 3.8],
      [x + 6.5, y + 7.6],
    ],
    { width: 1.4 },
  );
  pen.circle(x + 6.5, y + 9.4, 0.75, { width: 0, fill: 'black' });
}

/** A line from (x, y) to the right: to write on, or to part. */
export function ruleLine(pen: Pen, x: number, y: number, length: number, width = 0.8): void {
  pen.path(
    [
      [x, y],
      [x + length, y],
    ],
    { width },
  );
}

export function frame(pen: Pen, x: number, y: number, width: number, height: number, line: number): void {
  pen.path(
    [
      [x, y],
      [x + width, y],
      [x + width, y + height],
      [x, y + height],
    ],
    { closed: true, width: line },
  );
}
