import type { Confidence } from './source';

/** Total halogens above which used oil is presumed to be mixed with listed hazardous waste, ppm by mass (40 CFR 279.10). */
export const halogenPresumption = 1000;
/** Above this, used oil is off-specification as a fuel, ppm. */
export const halogenOffSpecification = 4000;
export const usedOilSource =
  '40 CFR 279.10(b)(1)(ii)(B): refrigeration oil is exempt when its refrigerant goes to reclaim and it is not mixed';
export const usedOilConfidence: Confidence = 'published';

export interface UsedOil {
  /** ppm by mass; refrigeration oil is nearly always above the limit. */
  readonly halogens: number;
  readonly refrigerantReclaimed: boolean;
  /** With flush solvent or oil from elsewhere: the exemption is lost. */
  readonly mixed: boolean;
}

export type UsedOilVerdict = 'used-oil' | 'exempt-from-presumption' | 'presumed-hazardous';

/** How used refrigeration oil counts: why spent flush solvent never goes into the used-oil can. */
export const usedOilVerdict = (oil: UsedOil): UsedOilVerdict => {
  if (oil.halogens <= halogenPresumption && !oil.mixed) return 'used-oil';
  return oil.refrigerantReclaimed && !oil.mixed ? 'exempt-from-presumption' : 'presumed-hazardous';
};
