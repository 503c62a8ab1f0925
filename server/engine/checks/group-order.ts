import type { Check } from './define';
import { chargeStillIn } from './rules/charge-still-in';
import { compressorWithoutRefrigerant } from './rules/compressor-without-refrigerant';
import { notProvedZero } from './rules/not-proved-zero';
import { openUnderPressure } from './rules/open-under-pressure';
import { powerNotRestored } from './rules/power-not-restored';
import { recoveryTooShallow } from './rules/recovery-too-shallow';
import { refrigerantVented } from './rules/refrigerant-vented';
import { sectionNotRecovered } from './rules/section-not-recovered';
import { workWithoutLockOut } from './rules/work-without-lock-out';

/** Order of the work, and the state that each step leaves. */
export const orderChecks: readonly Check[] = [
  workWithoutLockOut,
  compressorWithoutRefrigerant,
  powerNotRestored,
  openUnderPressure,
  refrigerantVented,
  chargeStillIn,
  sectionNotRecovered,
  recoveryTooShallow,
  notProvedZero,
];
