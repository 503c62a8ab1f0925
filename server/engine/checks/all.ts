import type { Check } from './define';
import { figureChecks } from './group-figures';
import { flowChecks } from './group-flow';
import { nameChecks } from './group-names';
import { orderChecks } from './group-order';
import { shopChecks } from './group-shop';
import { suitabilityChecks } from './group-suitability';

/** Every check, by the groups in which the manual shows them. A new check is one file and its line in its group. */
export const checks: readonly Check[] = [
  ...orderChecks,
  ...flowChecks,
  ...nameChecks,
  ...suitabilityChecks,
  ...figureChecks,
  ...shopChecks,
];
