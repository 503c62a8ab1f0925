import type { Confidence } from './source';

/** Refrigerants to which the rules on venting, and the certificates that go with them, do not apply in their listed uses. */
export const ventingExempt: readonly string[] = ['R-744', 'R-717', 'R-290', 'R-600a'];
export const ventingExemptSource =
  '40 CFR 82.154(a)(1): carbon dioxide in any use; ammonia in commercial and industrial process refrigeration; propane and isobutane only in the uses for which they are listed';
export const ventingExemptConfidence: Confidence = 'published';

/** The one that may be let off whatever the use. */
export const freelyVented = 'R-744';

/**
 * These only in uses for which they are listed: household refrigerators, stand-alone cabinets, room air conditioners and the
 * like (handbook 2.2, from memory), which are sealed and hold little.
 */
export const ventedWhereListed: readonly string[] = ['R-290', 'R-600a'];

/** No fluorinated gas, so that (EU) 2024/573 does not speak of it; a safety standard does. */
export const isNotFluorinated = (refrigerant: string | null): boolean =>
  refrigerant !== null && ventingExempt.includes(refrigerant);
