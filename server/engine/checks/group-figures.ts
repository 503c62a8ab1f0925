import type { Check } from './define';
import { chargeDoesNotFit } from './rules/charge-does-not-fit';
import { chargedTwice } from './rules/charged-twice';
import { decayLimitHigh } from './rules/decay-limit-high';
import { designPressureUnlikely } from './rules/design-pressure-unlikely';
import { evacuationNotDeep } from './rules/evacuation-not-deep';
import { evacuationNotReachable } from './rules/evacuation-not-reachable';
import { figureDiffers } from './rules/figure-differs';
import { firstChargeNotTrimmed } from './rules/first-charge-not-trimmed';
import { firstChargeUnusual } from './rules/first-charge-unusual';
import { flushTimeUnusual } from './rules/flush-time-unusual';
import { heldTooShort } from './rules/held-too-short';
import { impossibleLevel } from './rules/impossible-level';
import { lengthUnlikely } from './rules/length-unlikely';
import { limitFarTooLoose } from './rules/limit-far-too-loose';
import { limitOfOtherKind } from './rules/limit-of-other-kind';
import { oilAmountUnlikely } from './rules/oil-amount-unlikely';
import { purgePressureHigh } from './rules/purge-pressure-high';
import { siteTemperatureUnlikely } from './rules/site-temperature-unlikely';
import { stockFallsShort } from './rules/stock-falls-short';
import { targetOffPlate } from './rules/target-off-plate';
import { targetUnlikely } from './rules/target-unlikely';
import { testBelowDesign } from './rules/test-below-design';
import { testFarAboveDesign } from './rules/test-far-above-design';
import { workingTemperaturesUnlikely } from './rules/working-temperatures-unlikely';

/** Figures: what is stated against what is computed, and limits of the work. */
export const figureChecks: readonly Check[] = [
  impossibleLevel,
  designPressureUnlikely,
  siteTemperatureUnlikely,
  workingTemperaturesUnlikely,
  figureDiffers,
  flushTimeUnusual,
  testBelowDesign,
  testFarAboveDesign,
  targetUnlikely,
  purgePressureHigh,
  evacuationNotDeep,
  evacuationNotReachable,
  decayLimitHigh,
  lengthUnlikely,
  targetOffPlate,
  limitFarTooLoose,
  limitOfOtherKind,
  heldTooShort,
  stockFallsShort,
  chargeDoesNotFit,
  firstChargeNotTrimmed,
  firstChargeUnusual,
  chargedTwice,
  oilAmountUnlikely,
];
