import type { Confidence } from './source';
import { pound } from './table-units';

export type ApplianceUse = 'residential-and-light-commercial' | 'comfort-cooling' | 'commercial' | 'industrial';

/** Leak rate a year from which a repair is due. */
const triggers: Readonly<Record<ApplianceUse, number>> = {
  'residential-and-light-commercial': 0.1,
  'comfort-cooling': 0.1,
  commercial: 0.2,
  industrial: 0.3,
};

export interface LeakRule {
  readonly share: number;
  readonly citation: string;
  readonly confidence: Confidence;
}

/**
 * The leak rate that triggers a repair, or undefined where neither rule covers the appliance: 40 CFR 82.157 for
 * ozone-depleting gas from 50 lb, 40 CFR 84.106 for the rest from 15 lb, a warming potential above 53 and 2026-01-01,
 * which leaves residential and light commercial air conditioning out. `charge` in kg; `warming` by the fourth report.
 */
export const leakRule = (
  use: ApplianceUse,
  charge: number,
  refrigerant: { readonly ozoneDepleting: boolean; readonly warming: number },
  date: string,
): LeakRule | undefined => {
  if (refrigerant.ozoneDepleting)
    return charge >= 50 * pound - 1e-9
      ? { share: triggers[use], citation: '40 CFR 82.157', confidence: 'published' }
      : undefined;
  const covered = use !== 'residential-and-light-commercial' && refrigerant.warming > 53 && date >= '2026-01-01';
  return covered && charge >= 15 * pound - 1e-9
    ? { share: triggers[use], citation: '40 CFR 84.106', confidence: 'memory' }
    : undefined;
};
