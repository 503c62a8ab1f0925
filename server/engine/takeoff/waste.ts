import type { Plan } from '../plan/plan';
import type { Quantity } from '../quantity';
import { between, exactly } from '../quantity';
import type { Entry } from '../walk/walk';
import type { Figure } from './figure';
import type { RecoveryRun } from './recovery-run';

/** What goes home, container by container. Spent solvent and used oil never share one. */
export interface Waste {
  readonly kind: 'spent-solvent' | 'used-oil' | 'pump-oil' | 'old-part' | 'recovered-refrigerant';
  /** What is in it: the solvent, the oil, the refrigerant. */
  readonly what: string;
  /** Where it is kept: a can, or the cylinder by its name. */
  readonly container: string;
  /** Volume of a liquid, mass of a gas; null where the plan does not say how much comes out. */
  readonly quantity: Quantity | null;
  readonly keep: string;
}

/** The waste of a job, from its totals, its steps and the recovery cylinders. */
export const wasteOf = (
  plan: Plan,
  entries: readonly Entry[],
  totals: readonly Figure[],
  recovery: RecoveryRun,
): readonly Waste[] => [
  ...totals.flatMap(liquidOf),
  ...pumpOil(entries),
  ...oldParts(plan, entries),
  ...recovery.cylinders.map((each): Waste => {
    const put = each.end - each.start;
    return {
      kind: 'recovered-refrigerant',
      what: each.refrigerant ?? 'refrigerant',
      container: each.name,
      // Where a step put in what nobody knows, the amount is at least what is known.
      quantity: each.unknown.length > 0 && put <= 0 ? null : between('mass', put, put),
      keep: 'Never mixed with another refrigerant; weighed in and out.',
    };
  }),
];

function liquidOf(figure: Figure): readonly Waste[] {
  const { quantity, subject: what } = figure;
  if (figure.name === 'spent-solvent-volume')
    return [
      {
        kind: 'spent-solvent',
        what,
        container: 'vented metal can for spent solvent',
        quantity,
        keep: 'Apart from used oil: mixed, both are hazardous waste.',
      },
    ];
  if (figure.name === 'used-oil')
    return [
      {
        kind: 'used-oil',
        what,
        container: 'can for used oil',
        quantity,
        keep: 'Apart from spent solvent, and from oil of other sources.',
      },
    ];
  return [];
}

/** Oil of the vacuum pump, where a step changes it: the pump's own mark says how much it holds. */
const pumpOil = (entries: readonly Entry[]): readonly Waste[] =>
  entries.some(({ slot: { step } }) => step.word.word === 'change' && step.text.includes('pump-oil'))
    ? [
        {
          kind: 'pump-oil',
          what: 'oil of the vacuum pump',
          container: 'bottle for pump oil',
          quantity: null,
          keep: 'It may hold water, acid and old oil: apart from used oil of the machine.',
        },
      ]
    : [];

/** Oil that goes away in machines that come off and that no step drains. */
function oldParts(plan: Plan, entries: readonly Entry[]): readonly Waste[] {
  const off = new Map<number, Entry>();
  for (const entry of entries)
    for (const event of entry.events)
      if (event.type === 'unmounts')
        for (const index of event.parts) if (entry.before.parts[index]?.mounted === 'old') off.set(index, entry);
  return [...off].flatMap(([index, entry]): readonly Waste[] => {
    const part = plan.graph.parts[index]!;
    if (part.kind.kind !== 'compressor' || part.standing === 'kept' || part.standing === 'reused') return [];
    const drained = entry.before.parts[index]!.drained !== null;
    // Of a part that comes new, the oil that the plan states is the new one's.
    const stated = part.standing === 'removed' ? part.properties.oil : undefined;
    return [
      {
        kind: 'old-part',
        what: `${plan.system.oil.before ?? 'old'} oil in the old ${part.name}`,
        container: drained ? 'can for used oil' : `the old ${part.name}, capped`,
        quantity: stated ? exactly('volume', stated.volume) : null,
        keep: drained ? 'Drained before it came off.' : 'Drained before it goes to scrap, or told to whoever takes it.',
      },
    ];
  });
}
