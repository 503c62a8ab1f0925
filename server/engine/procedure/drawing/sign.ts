import type { Mark, Sign } from './graph';
import { area, label, line, rectangle, type Shape } from './shape';
import { type Stroke, thin } from './stroke';

/** Half the height of every sign about the axis of the flow. */
export const signHalf = 8;

const signWidths: Readonly<Record<Sign, number>> = {
  line: 28,
  valve: 16,
  'driven-valve': 16,
  'expansion-valve': 16,
  compressor: 16,
  coil: 30,
  vessel: 28,
  drier: 24,
  'sight-glass': 16,
  box: 26,
};

export const signWidth = (sign: Sign): number => signWidths[sign];

/** Two triangles tip to tip: black when shut. */
export function bowTie(x: number, y: number, half: number, shut: boolean, { width, style }: Stroke): readonly Shape[] {
  const fill = shut ? 'black' : 'white';
  return [
    area(
      [
        [x - half, y - half * 0.7],
        [x, y],
        [x - half, y + half * 0.7],
      ],
      fill,
      width,
      style,
    ),
    area(
      [
        [x + half, y - half * 0.7],
        [x, y],
        [x + half, y + half * 0.7],
      ],
      fill,
      width,
      style,
    ),
  ];
}

/** A square with both its diagonals: never flush. */
export function crossedBox(x: number, y: number, size: number): readonly Shape[] {
  return [
    area(rectangle(x, y, size, size), 'white', 1),
    line(
      [
        [x, y],
        [x + size, y + size],
      ],
      1,
    ),
    line(
      [
        [x + size, y],
        [x, y + size],
      ],
      1,
    ),
  ];
}

function capsule(x: number, y: number, half: number): readonly (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  const straight = half - signHalf;
  for (let step = 0; step <= 24; step++) {
    const angle = -Math.PI / 2 + (Math.PI * step) / 12;
    const side = step <= 12 ? straight : -straight;
    points.push([x + side + signHalf * Math.cos(angle), y + signHalf * Math.sin(angle)]);
  }
  return points;
}

const circle = (x: number, y: number, radius: number, fill: 'white' | 'black', { width, style }: Stroke): Shape => ({
  kind: 'circle',
  x,
  y,
  radius,
  width,
  style,
  fill,
});

/** The sign about (x, y), flow to the right. Leads are not part of it. */
export function drawSign(sign: Sign, x: number, y: number, shut: boolean, stroke: Stroke): readonly Shape[] {
  const { width, style } = stroke;
  const half = signWidth(sign) / 2;
  const frame = area(rectangle(x - half, y - signHalf, 2 * half, 2 * signHalf), 'white', width, style);
  switch (sign) {
    case 'line':
      return [];
    case 'valve':
      return bowTie(x, y, half, shut, stroke);
    case 'driven-valve':
      return [
        ...bowTie(x, y, half, shut, stroke),
        line(
          [
            [x, y],
            [x, y - 6],
          ],
          0.9,
        ),
        area(rectangle(x - 4, y - 9.5, 8, 4), 'white', 0.9),
      ];
    case 'expansion-valve':
      return [
        ...bowTie(x, y, half, shut, stroke),
        line(
          [
            [x, y],
            [x, y - 6],
          ],
          0.9,
        ),
        line(
          [
            [x - 5, y - 6],
            [x - 3, y - 8.5],
            [x + 3, y - 8.5],
            [x + 5, y - 6],
            [x - 5, y - 6],
          ],
          0.9,
        ),
      ];
    case 'compressor':
      return [
        circle(x, y, signHalf, 'white', stroke),
        line(
          [
            [x - 4.5, y - 6.2],
            [x + 7.6, y - 2.4],
          ],
          0.9,
        ),
        line(
          [
            [x - 4.5, y + 6.2],
            [x + 7.6, y + 2.4],
          ],
          0.9,
        ),
      ];
    case 'coil': {
      const zigzag = Array.from({ length: 7 }, (_, n): readonly [number, number] => [
        x - half + 3 + (n * (2 * half - 6)) / 6,
        n === 0 || n === 6 ? y : n % 2 === 1 ? y - 5 : y + 5,
      ]);
      return [frame, line([[x - half, y], ...zigzag, [x + half, y]], 0.9)];
    }
    case 'vessel':
      return [area(capsule(x, y, half), 'white', width, style)];
    case 'drier':
      return [
        frame,
        line(
          [
            [x - 4, y - signHalf],
            [x - 4, y + signHalf],
          ],
          0.9,
          'dotted',
        ),
        line(
          [
            [x, y - signHalf],
            [x, y + signHalf],
          ],
          0.9,
          'dotted',
        ),
        line(
          [
            [x + 4, y - signHalf],
            [x + 4, y + signHalf],
          ],
          0.9,
          'dotted',
        ),
      ];
    case 'sight-glass':
      return [circle(x, y, signHalf, 'white', stroke), circle(x, y, 2.5, 'black', thin)];
    case 'box':
      return [frame];
  }
}

export const markWidth = 12;

/** A mark about (x, y) at an end. `inward` is 1 where the part lies to the right of it, -1 to the left. */
export function drawMark(what: Mark['what'], x: number, y: number, inward: 1 | -1): readonly Shape[] {
  switch (what) {
    case 'near':
    case 'far':
      return [
        area(rectangle(x - 5.5, y - 5.5, 11, 11), 'white', 0.8),
        label(x, y + 3.3, what === 'near' ? 'N' : 'F', 'middle', true),
      ];
    case 'solvent-in':
      return [
        area(
          [
            [x - 4.5 * inward, y - 5],
            [x + 4.5 * inward, y],
            [x - 4.5 * inward, y + 5],
          ],
          'black',
        ),
      ];
    case 'solvent-out':
      return [
        area(
          [
            [x + 4.5 * inward, y - 5],
            [x - 4.5 * inward, y],
            [x + 4.5 * inward, y + 5],
          ],
          'white',
          1.1,
        ),
      ];
    case 'open':
      return [circle(x, y, 4, 'white', { width: 1.1, style: 'solid' })];
    case 'capped':
      return [area(rectangle(x - 1.5, y - 6, 3, 12), 'black')];
  }
}

/** The head of an arrow with its tip at (x, y). */
export function arrow(x: number, y: number, towards: 'right' | 'left' | 'down' | 'up'): Shape {
  const [dx, dy] = { right: [1, 0], left: [-1, 0], down: [0, 1], up: [0, -1] }[towards] as [number, number];
  const back = 7;
  const side = 3;
  return area(
    [
      [x, y],
      [x - dx * back + dy * side, y - dy * back + dx * side],
      [x - dx * back - dy * side, y - dy * back - dx * side],
    ],
    'black',
    0.4,
  );
}
