import type { Check } from './define';
import { figureChecks } from './group-figures';
import { nameChecks } from './group-names';
import { shopChecks } from './group-shop';
import { suitabilityChecks } from './group-suitability';
import { openUnderPressure } from './rules/open-under-pressure';

/** Every check, by the groups in which the manual shows them. A new check is one file and its line in its group. */
export const checks: readonly Check[] = [
  openUnderPressure,
  ...nameChecks,
  ...suitabilityChecks,
  ...figureChecks,
  ...shopChecks,
];
