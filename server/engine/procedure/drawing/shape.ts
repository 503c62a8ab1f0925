/** Line styles tell kept, new, removed and reused apart; there is no colour and no grey. */
export type LineStyle = 'solid' | 'dashed' | 'dash-dot' | 'dotted';

/** Points of 1/72 inch; x to the right, y down. All strokes are black, closed shapes are black or white inside. */
export type Shape =
  | {
      readonly kind: 'path';
      readonly points: readonly (readonly [number, number])[];
      readonly closed: boolean;
      readonly width: number;
      readonly style: LineStyle;
      readonly fill: 'none' | 'black' | 'white';
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly radius: number;
      readonly width: number;
      readonly style: LineStyle;
      readonly fill: 'none' | 'black' | 'white';
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      /** The baseline. */
      readonly y: number;
      readonly text: string;
      readonly size: number;
      readonly bold: boolean;
      readonly anchor: 'start' | 'middle' | 'end';
    };

export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly Shape[];
  /** The same circuit in words, in flow order, for plain text and for those who cannot see the drawing. */
  readonly listing: readonly string[];
}

/** Dash lengths in points for a style, empty for a solid line. */
export function dashes(style: LineStyle): readonly number[] {
  if (style === 'dashed') return [5, 3];
  if (style === 'dash-dot') return [8, 2.5, 1.5, 2.5];
  if (style === 'dotted') return [1.2, 2.4];
  return [];
}

export const line = (
  points: readonly (readonly [number, number])[],
  width: number,
  style: LineStyle = 'solid',
): Shape => ({ kind: 'path', points, closed: false, width, style, fill: 'none' });

export const area = (
  points: readonly (readonly [number, number])[],
  fill: 'none' | 'black' | 'white',
  width = 0.8,
  style: LineStyle = 'solid',
): Shape => ({ kind: 'path', points, closed: true, width, style, fill });

export const label = (
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'middle',
  bold = false,
  size = 9,
): Shape => ({ kind: 'text', x, y, text, size, bold, anchor });

export const rectangle = (
  x: number,
  y: number,
  width: number,
  height: number,
): readonly (readonly [number, number])[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];
