import type { Confidence } from './source';

/** Refrigerants to which the rules on venting, and the certificates that go with them, do not apply in their listed uses. */
export const ventingExempt: readonly string[] = ['R-744', 'R-717', 'R-290', 'R-600a'];
export const ventingExemptSource =
  '40 CFR 82.154(a)(1): carbon dioxide in any use; ammonia in commercial and industrial process refrigeration; propane and isobutane only in the uses for which they are listed';
export const ventingExemptConfidence: Confidence = 'published';

/** The one that may be let off whatever the use; the others only in uses that a plan does not state. */
export const freelyVented = 'R-744';
