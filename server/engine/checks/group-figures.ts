import type { Check } from './define';
import { chargedTwice } from './rules/charged-twice';
import { decayLimitHigh } from './rules/decay-limit-high';
import { evacuationNotDeep } from './rules/evacuation-not-deep';
import { evacuationNotReachable } from './rules/evacuation-not-reachable';
import { figureDiffers } from './rules/figure-differs';
import { firstChargeUnusual } from './rules/first-charge-unusual';
import { flushTimeUnusual } from './rules/flush-time-unusual';
import { stockFallsShort } from './rules/stock-falls-short';
import { testBelowDesign } from './rules/test-below-design';

/** Figures: what is stated against what is computed, and limits of the work. */
export const figureChecks: readonly Check[] = [
  figureDiffers,
  flushTimeUnusual,
  testBelowDesign,
  evacuationNotDeep,
  evacuationNotReachable,
  decayLimitHigh,
  stockFallsShort,
  firstChargeUnusual,
  chargedTwice,
];
