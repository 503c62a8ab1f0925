import type { PartState } from './graph';
import type { LineStyle } from './shape';

export interface Stroke {
  readonly width: number;
  readonly style: LineStyle;
}

/** The thin line of whatever stands as it stood. */
export const thin: Stroke = { width: 0.9, style: 'solid' };

const strokes: Readonly<Record<PartState, Stroke>> = {
  kept: thin,
  new: { width: 2.4, style: 'solid' },
  added: { width: 2.4, style: 'solid' },
  removed: { width: 1.2, style: 'dashed' },
  reused: { width: 1.6, style: 'dash-dot' },
};

export const strokeOf = (state: PartState): Stroke => strokes[state];
