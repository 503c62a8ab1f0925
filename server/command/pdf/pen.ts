import type { Sentence, SpanStyle } from '../../engine/procedure/sentence';
import { sentence, spans } from '../../engine/procedure/sentence';
import { type Line, type Measure, wrap } from '../../engine/procedure/wrap';
import { leading, noteSize } from './paper';

/** Type of a stretch of text: what `plain` means in it. */
export interface Type {
  readonly size: number;
  readonly bold: boolean;
}

/** Text broken to a width, ready to be put down: its height is known before it is drawn. */
export interface SetText {
  readonly lines: readonly Line[];
  readonly type: Type;
  readonly width: number;
  readonly height: number;
}

type Ink = 'black' | 'white';
type Points = readonly (readonly [number, number])[];

/** What a sheet is drawn with; all measures in points, y down from the page's top. */
export interface Pen {
  readonly set: (text: string | Sentence, width: number, type: Type) => SetText;
  readonly widthOf: (text: string, type: Type) => number;
  /** The text itself, or as much of it as the width holds with a sign that something is left out. */
  readonly fitted: (text: string, width: number, type: Type) => string;
  /** Puts set text down with its top left at (x, y). */
  readonly put: (text: SetText, x: number, y: number, align?: 'left' | 'right') => void;
  readonly label: (
    text: string,
    x: number,
    baseline: number,
    type: Type,
    anchor?: 'start' | 'middle' | 'end',
    ink?: Ink,
  ) => void;
  readonly path: (
    points: Points,
    how: { closed?: boolean; width?: number; dash?: readonly number[]; fill?: Ink | 'none' },
  ) => void;
  readonly circle: (
    x: number,
    y: number,
    radius: number,
    how: { width?: number; dash?: readonly number[]; fill?: Ink | 'none' },
  ) => void;
  /** Draws with the origin moved to (x, y) and everything scaled. */
  readonly scaled: (x: number, y: number, scale: number, draw: () => void) => void;
}

/** Control signs have no glyph. */
const printable = (text: string): string => text.replace(/[\u0000-\u001f\u007f]/g, ' ');

export function makePen(document: PDFKit.PDFDocument): Pen {
  const known = new Map<string, number>();
  const widthOf = (text: string, { size, bold }: Type): number => {
    const key = `${bold ? 'b' : 'r'}${text}`;
    let width = known.get(key);
    if (width === undefined) {
      // Measured once at 100 points: widths are in proportion to the size.
      document.font(bold ? 'bold' : 'regular').fontSize(100);
      width = document.widthOfString(printable(text)) / 100;
      known.set(key, width);
    }
    return width * size;
  };
  const typeOf = (style: SpanStyle, type: Type): Type => {
    if (style === 'strong') return { ...type, bold: true };
    if (style === 'small') return { size: Math.min(type.size, noteSize), bold: false };
    return type;
  };
  const label: Pen['label'] = (text, x, baseline, type, anchor = 'start', ink = 'black') => {
    const width = widthOf(text, type);
    const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
    document
      .font(type.bold ? 'bold' : 'regular')
      .fontSize(type.size)
      .fillColor(ink);
    document.text(printable(text), left, baseline, { lineBreak: false, baseline: 'alphabetic' });
  };
  const stroke = (how: { width?: number; dash?: readonly number[]; fill?: Ink | 'none' }) => {
    const { width = 0.8, dash = [], fill = 'none' } = how;
    document.lineWidth(width).lineJoin('round').strokeColor('black');
    if (dash.length > 0) document.dash(dash[0]!, { space: dash[1]! } as object);
    if (dash.length > 2) document.dash([...dash] as unknown as number, {});
    if (fill !== 'none' && width > 0) document.fillAndStroke(fill, 'black');
    else if (fill !== 'none') document.fill(fill);
    else document.stroke();
    if (dash.length > 0) document.undash();
  };
  return {
    widthOf,
    label,
    fitted: (text, width, type) => {
      if (widthOf(text, type) <= width) return text;
      let kept = '';
      for (const sign of text) {
        if (widthOf(`${kept}${sign}…`, type) > width) break;
        kept += sign;
      }
      return `${kept}…`;
    },
    set: (text, width, type) => {
      const measure: Measure = (part, style) => widthOf(part, typeOf(style, type));
      const runs = typeof text === 'string' ? sentence(text) : text;
      const lines = wrap(spans(runs), width, measure);
      return { lines, type, width, height: lines.length * leading(type.size) };
    },
    put: (text, x, y, align = 'left') => {
      for (const [n, line] of text.lines.entries()) {
        const baseline = y + n * leading(text.type.size) + text.type.size * 0.95;
        let at = align === 'left' ? x : x + text.width - line.width;
        for (const piece of line.pieces) {
          const type = typeOf(piece.style, text.type);
          label(piece.text, at, baseline, type);
          at += widthOf(piece.text, type);
        }
      }
    },
    path: (points, how) => {
      for (const [n, [x, y]] of points.entries()) {
        if (n === 0) document.moveTo(x, y);
        else document.lineTo(x, y);
      }
      if (how.closed === true) document.closePath();
      stroke(how);
    },
    circle: (x, y, radius, how) => {
      document.circle(x, y, radius);
      stroke(how);
    },
    scaled: (x, y, scale, draw) => {
      document.save().translate(x, y).scale(scale);
      draw();
      document.restore();
    },
  };
}
