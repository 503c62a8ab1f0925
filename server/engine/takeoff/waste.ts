import type { Quantity } from '../quantity';
import { between } from '../quantity';
import type { Figure } from './figure';
import type { RecoveryRun } from './recovery-run';

/** What goes home, container by container. Spent solvent and used oil never share one. */
export interface Waste {
  readonly kind: 'spent-solvent' | 'used-oil' | 'recovered-refrigerant';
  /** What is in it: the solvent, the oil, the refrigerant. */
  readonly what: string;
  /** Where it is kept: a can, or the cylinder by its name. */
  readonly container: string;
  /** Volume of a liquid, mass of a gas; null where the plan does not say how much comes out. */
  readonly quantity: Quantity | null;
  readonly keep: string;
}

/** The waste of a job, from its totals and the recovery cylinders. */
export function wasteOf(totals: readonly Figure[], recovery: RecoveryRun): readonly Waste[] {
  const liquids = totals.flatMap((figure): Waste[] => {
    if (figure.name === 'spent-solvent-volume')
      return [
        {
          kind: 'spent-solvent',
          what: figure.subject,
          container: 'vented metal can for spent solvent',
          quantity: figure.quantity,
          keep: 'Apart from used oil: mixed, both are hazardous waste.',
        },
      ];
    if (figure.name === 'used-oil')
      return [
        {
          kind: 'used-oil',
          what: figure.subject,
          container: 'can for used oil',
          quantity: figure.quantity,
          keep: 'Apart from spent solvent, and from oil of other sources.',
        },
      ];
    return [];
  });
  const gas = recovery.cylinders.map((each): Waste => {
    const put = each.end - each.start;
    return {
      kind: 'recovered-refrigerant',
      what: each.refrigerant ?? 'refrigerant',
      container: each.name,
      // Where a step put in what nobody knows, the amount is at least what is known.
      quantity: each.unknown.length > 0 && put <= 0 ? null : between('mass', put, put),
      keep: 'Never mixed with another refrigerant; weighed in and out.',
    };
  });
  return [...liquids, ...gas];
}
