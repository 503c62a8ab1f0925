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

/** The regulated substances of 42 U.S.C. 7675(c)(1). */
const regulated: ReadonlySet<string> = new Set([
  'R-23',
  'R-32',
  'R-41',
  'R-125',
  'R-134',
  'R-134a',
  'R-143',
  'R-143a',
  'R-152',
  'R-152a',
  'R-227ea',
  'R-236cb',
  'R-236ea',
  'R-236fa',
  'R-245ca',
  'R-245fa',
  'R-365mfc',
  'R-43-10mee',
]);

/**
 * The leak rate that triggers a repair, or undefined where neither rule covers the appliance: 40 CFR 82.157 for
 * ozone-depleting gas and its blends from 50 lb; 40 CFR 84.106 from 15 lb and from 2026-01-01 for what holds a regulated
 * substance, or is a substitute with a warming potential above 53. That one leaves out residential and light commercial
 * air conditioning, and gas that is ozone-depleting and nothing else; so a blend such as R-402A comes under it below 50 lb.
 * `charge` in kg; `warming` by the fourth report; `composition` null for a single substance.
 */
export const leakRule = (
  use: ApplianceUse,
  charge: number,
  refrigerant: {
    readonly ozoneDepleting: boolean;
    readonly warming: number;
    readonly composition: readonly { readonly refrigerant: string }[] | null;
  },
  date: string,
): LeakRule | undefined => {
  const share = triggers[use];
  if (refrigerant.ozoneDepleting && charge >= 50 * pound - 1e-9)
    return { share, citation: '40 CFR 82.157(c)', confidence: 'published' };
  const held = refrigerant.composition?.some((part) => regulated.has(part.refrigerant)) ?? false;
  const covered =
    use !== 'residential-and-light-commercial' &&
    (held || (!refrigerant.ozoneDepleting && refrigerant.warming > 53)) &&
    date >= '2026-01-01';
  return covered && charge >= 15 * pound - 1e-9
    ? { share, citation: '40 CFR 84.106(c)', confidence: 'published' }
    : undefined;
};
