import { nitrogenStandardVolume } from '../properties';
import { exactly, type Quantity } from '../quantity';
import type { Entry } from '../walk/walk';
import type { NitrogenRun } from './nitrogen-run';
import type { RecoveryRun } from './recovery-run';
import type { SupplyRun } from './supply-run';

/** Something of the stated stock that does not last: the first step that it fails, and what is missing in all. */
export interface Shortfall {
  readonly kind: 'nitrogen' | 'solvent' | 'refrigerant' | 'oil' | 'recovery';
  /** "nitrogen", "shop-flush", "room for R-22". */
  readonly what: string;
  readonly entry: Entry;
  readonly missing: Quantity;
}

export interface Runs {
  readonly nitrogen: NitrogenRun;
  readonly solvents: readonly SupplyRun[];
  readonly refrigerants: readonly SupplyRun[];
  readonly oils: readonly SupplyRun[];
  readonly recovery: RecoveryRun;
}

/** Where the stated stock falls short. A stock that is not stated never does. */
export function shortfallsOf(runs: Runs): readonly Shortfall[] {
  const found: Shortfall[] = [];
  const { nitrogen, recovery } = runs;
  if (nitrogen.stated && nitrogen.short)
    found.push({
      kind: 'nitrogen',
      what: 'nitrogen',
      entry: nitrogen.short.entry,
      missing: exactly('volume', nitrogenStandardVolume(nitrogen.short.mass)),
    });
  const supplies = [
    ['solvent', runs.solvents],
    ['refrigerant', runs.refrigerants],
    ['oil', runs.oils],
  ] as const;
  for (const [kind, all] of supplies)
    for (const { what, stated, short, kind: measured } of all)
      if (stated && short)
        found.push({
          kind,
          what: kind === 'oil' ? `${what} oil` : what,
          entry: short.entry,
          missing: exactly(measured, short.amount),
        });
  if (recovery.stated)
    for (const { entry, refrigerant, mass } of recovery.short)
      found.push({ kind: 'recovery', what: `room for ${refrigerant}`, entry, missing: exactly('mass', mass) });
  return found;
}
