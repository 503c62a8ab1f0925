import type { Part } from '../circuit/graph';
import type { Plan } from '../plan/plan';
import { exactly } from '../quantity';
import { fahrenheit } from '../reference/table-units';
import type { Figure } from './figure';
import { oilFilm, tubeWorkingPressure, wettedArea } from './figures';
import { computed, input, named } from './given';
import { suitabilityOf } from './line-suitability';
import { boreOf, lengthOf, linesOf } from './lines';
import { optionsOf } from './options';
import type { FigureOptions } from './relation';
import { volumeOfLine } from './volumes';

/** What a line is, and whether it suits what will flow through it. */
export interface LineFigures {
  readonly part: string;
  readonly figures: readonly Figure[];
}

const known = new WeakMap<Plan['head'], readonly LineFigures[]>();

/** The figures of each line of a plan, in the order of the circuit. They do not hang on its steps. */
export function figuresOfLines(plan: Plan): readonly LineFigures[] {
  let found = known.get(plan.head);
  if (!found) known.set(plan.head, (found = ofLines(plan)));
  return found;
}

function ofLines(plan: Plan): readonly LineFigures[] {
  const options = optionsOf(plan);
  const told = new Set<string>();
  return linesOf(plan).map((part) => ({
    part: part.name,
    figures: [
      volumeOfLine(plan, part),
      rating(part, options),
      ...(keepsOldOil(plan, part) ? [filmOf(part, options)] : []),
      ...suitabilityOf(plan, part, options),
    ].filter((figure) => {
      const key = `${figure.name} ${figure.subject}`;
      return told.has(key) ? false : told.add(key);
    }),
  }));
}

/** A line that stays while the oil changes. */
export const keepsOldOil = (plan: Plan, part: Part): boolean =>
  plan.system.oil.before !== null &&
  plan.system.oil.before !== plan.system.oil.after &&
  (part.standing === 'kept' || part.standing === 'reused');

/** Old oil on the wall of a line that was blown out and not flushed. */
export function filmOf(part: Part, options: FigureOptions): Figure {
  const area = wettedArea.figure(part.name, { bore: boreOf(part), length: lengthOf(part) }, options);
  return oilFilm.figure(part.name, { area: computed(area) }, options);
}

/** Tube stands at about this in work; the first row of the table of stresses. */
const tubeTemperature = fahrenheit(100);

function rating(part: Part, options: FigureOptions): Figure {
  const { tube } = part.properties;
  return tubeWorkingPressure.figure(
    part.name,
    {
      outsideDiameter: tube && input(exactly('length', tube.outside), 'reference', undefined, tube.shown),
      wall: tube && input(exactly('length', tube.wall), tube.measured ? 'plan' : 'reference'),
      temper: named('annealed', 'default'),
      temperature: input(exactly('temperature', tubeTemperature), 'default'),
    },
    options,
  );
}
