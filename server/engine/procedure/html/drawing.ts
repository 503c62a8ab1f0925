import { type Drawing, dashes, type Shape } from '../drawing/shape';
import { escaped } from './escape';

const round = (value: number): string => String(Math.round(value * 100) / 100);

function stroke(width: number, style: 'solid' | 'dashed' | 'dash-dot' | 'dotted'): string {
  const dash = dashes(style);
  const pattern = dash.length === 0 ? '' : ` stroke-dasharray="${dash.join(' ')}"`;
  return width === 0 ? ' style="stroke:none"' : ` stroke-width="${width}"${pattern}`;
}

function shapeHtml(shape: Shape): string {
  if (shape.kind === 'text') {
    const weight = shape.bold ? ' font-weight="bold"' : '';
    return `<text x="${round(shape.x)}" y="${round(shape.y)}" font-size="${shape.size}" text-anchor="${shape.anchor}"${weight}>${escaped(shape.text)}</text>`;
  }
  const fill = ` class="fill-${shape.fill}"`;
  if (shape.kind === 'circle') {
    return `<circle cx="${round(shape.x)}" cy="${round(shape.y)}" r="${shape.radius}"${fill}${stroke(shape.width, shape.style)}/>`;
  }
  const points = shape.points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');
  return `<${shape.closed ? 'polygon' : 'polyline'} points="${points}"${fill}${stroke(shape.width, shape.style)}/>`;
}

/** The drawing as inline SVG, with the circuit in words for those who cannot see it. */
export function drawingHtml(drawing: Drawing): string {
  const margin = 2;
  const box = `${-margin} ${-margin} ${round(drawing.width + 2 * margin)} ${round(drawing.height + 2 * margin)}`;
  return [
    `<div class="drawing"><svg class="circuit" viewBox="${box}" role="img" aria-label="${escaped(drawing.listing.join('. '))}">`,
    ...drawing.shapes.map(shapeHtml),
    '</svg></div>',
  ].join('\n');
}
