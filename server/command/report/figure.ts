import type { Kind, Quantity, ShowOptions } from '../../engine/quantity';
import type { Figure } from '../../engine/takeoff/figure';
import { showFigure } from '../../engine/takeoff/show-figure';
import type { FigureReport } from '../shapes/figure';

/** The SI unit in which the engine keeps a kind, as a plan would write it. */
export const unitOf: Readonly<Record<Kind, string>> = {
  length: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  temperature: 'K',
  'temperature-difference': 'K',
  pressure: 'Pa absolute',
  'pressure-difference': 'Pa',
  'volume-flow': 'm3/s',
  'mass-flow': 'kg/s',
  velocity: 'm/s',
  density: 'kg/m3',
  altitude: 'm',
  'mass-per-length': 'kg/m',
  power: 'W',
  energy: 'J',
  share: '1',
  'acid-number': 'mgKOH/g',
  torque: 'N·m',
  viscosity: 'Pa·s',
  count: '1',
  enthalpy: 'J/kg',
  conductance: 'm3/s',
  'charge-per-volume': 'kg/m3',
};

type Ends = { readonly value?: number; readonly low?: number; readonly high?: number };

const ends = ({ low, high }: Quantity): Ends => (low === high ? { value: low } : { low, high });

/** A figure as other programs read it: SI in full precision. */
export function figureReport(figure: Figure, options: ShowOptions): FigureReport {
  return {
    name: figure.name,
    subject: figure.subject,
    unit: unitOf[figure.kind],
    ...(figure.quantity && ends(figure.quantity)),
    shown: showFigure(figure, options),
    inputs: Object.fromEntries(
      Object.entries(figure.inputs).map(([name, { quantity, shown, from }]) => [
        name,
        quantity ? { ...ends(quantity), unit: unitOf[quantity.kind], from } : { value: shown, unit: '', from },
      ]),
    ),
    formula: figure.formula,
    sources: [...figure.sources],
    confidence: figure.confidence,
    notes: [...figure.notes],
    missing: [...figure.missing],
  };
}
