import { ownSystem } from '../../plan/own-system';
import type { Plan, Stated } from '../../plan/plan';
import type { Amount as Authored } from '../../plan/term';
import { exactly, isProblem, type Kind, type Quantity, show, toQuantity, unitNamed } from '../../quantity';
import type { Figure } from '../../takeoff/figure';
import { relationNamed } from '../../takeoff/figures';
import { type Amount, amount, computed } from '../sentence';

export type Units = 'inch-pound' | 'si' | 'both';
type System = 'inch-pound' | 'si';

/** Puts quantities on the sheet: the author's text untouched, computed ones in the plan's own units, the twin behind. */
export interface Ruler {
  /** The system that the plan is written in. */
  readonly own: System;
  /** The system in which readings are asked. */
  readonly main: System;
  readonly units: Units;
  readonly atmosphere: number;
  /** A fact of the trade counted from the atmosphere, Pa over it: "10 psig". */
  gauge(over: number): Amount;
  /** Unit of a vacuum gauge. */
  readonly vacuum: string;
  authored(amount: Authored): Amount;
  stated(stated: Stated): Amount;
  /** A computed quantity; `as` names the unit of the first figure where that unit is of the main system. */
  computed(quantity: Quantity, as?: string, digits?: number): Amount;
  /** A fact of the trade: shown like a computed one, without the mark. */
  fact(quantity: Quantity, as?: string, digits?: number): Amount;
  /** A figure, or null where it could not be computed. */
  figure(figure: Figure): Amount | null;
  /** Unit in which a reading of this kind is asked: that of the author's own limit if there is one. */
  unit(kind: Kind, like?: Authored | null): string;
}

/** Computed times, counts and distances are no surer than two digits. */
const roughDigits: Partial<Record<Kind, number>> = { time: 2, count: 2, length: 2, 'pressure-difference': 2 };

const readingUnits: Partial<Record<Kind, readonly [inchPound: string, si: string]>> = {
  pressure: ['psig', 'kPa gauge'],
  'pressure-difference': ['psi', 'kPa'],
  temperature: ['degF', 'degC'],
  'temperature-difference': ['Δ°F', 'Δ°C'],
  mass: ['lb', 'kg'],
  volume: ['fl-oz', 'mL'],
  length: ['in', 'mm'],
  'volume-flow': ['cfh', 'L/min'],
  torque: ['ft-lb', 'N·m'],
  share: ['%', '%'],
  'acid-number': ['mgKOH/g', 'mgKOH/g'],
  time: ['min', 'min'],
};

export function rulerOf(plan: Plan, units: Units): Ruler {
  const own = ownSystem(plan.head);
  const main = units === 'both' ? own : units;
  const atmosphere = plan.site.atmosphere;
  const other: System = main === 'si' ? 'inch-pound' : 'si';

  const ofSystem = (quantity: Quantity, system: System, as?: string, digits?: number): string => {
    const unit = as === undefined ? undefined : unitNamed(as);
    const fits = unit && (unit.system === system || unit.system === 'both');
    return show(quantity, {
      system,
      atmosphere,
      ...(fits && { as: unit.name }),
      ...(unit?.reference && { level: unit.reference }),
      ...(digits !== undefined && { digits }),
    });
  };
  const pair = (quantity: Quantity, as?: string, digits?: number): readonly [string, string | null] => {
    const first = ofSystem(quantity, main, as, digits);
    // A count reads the same in either system.
    if (quantity.kind === 'count') return [first, null];
    const second = units === 'both' ? ofSystem(quantity, other, as) : null;
    return [first, second === first ? null : second];
  };

  const authored = ({ literal, kind }: Authored): Amount => {
    const quantity = toQuantity(literal, kind, atmosphere);
    const { system, reference } = literal.unit;
    const twin: System | null =
      system === 'both' ? null : units === 'both' ? (system === 'si' ? 'inch-pound' : 'si') : units;
    if (isProblem(quantity) || twin === null || twin === system) return amount(literal.text);
    return amount(literal.text, show(quantity, { system: twin, atmosphere, ...(reference && { level: reference }) }));
  };

  return {
    own,
    main,
    units,
    atmosphere,
    vacuum: main === 'si' ? 'Pa absolute' : 'micron',
    authored,
    stated: (stated) => authored(stated.amount),
    computed: (quantity, as, digits) => computed(...pair(quantity, as, digits)),
    fact: (quantity, as, digits) => amount(...pair(quantity, as, digits)),
    gauge: (over) => amount(...pair(exactly('pressure', atmosphere + over), main === 'si' ? 'kPa gauge' : 'psig', 2)),
    figure: (figure) => {
      if (figure.quantity === null) return null;
      const relation = relationNamed(figure.name);
      const digits = relation?.outputDigits ?? roughDigits[figure.kind];
      return computed(...pair(figure.quantity, relation?.outputUnit, digits));
    },
    unit: (kind, like) => {
      if (like) return like.literal.unit.name;
      const found = readingUnits[kind];
      return found ? found[main === 'si' ? 1 : 0] : '';
    },
  };
}
