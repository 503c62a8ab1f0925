import type { Check } from './define';
import { brazingFlowRange } from './rules/brazing-flow';
import { brazingWithoutNitrogen } from './rules/brazing-without-nitrogen';
import { chargeIntoGas } from './rules/charge-into-gas';
import { chargeStillIn } from './rules/charge-still-in';
import { closureLeftIn } from './rules/closure-left-in';
import { compressorWithoutRefrigerant } from './rules/compressor-without-refrigerant';
import { decayLimitMissing } from './rules/decay-limit-missing';
import { decayTestMissing } from './rules/decay-test-missing';
import { evacuatedCold } from './rules/evacuated-cold';
import { jointLeftOpen } from './rules/joint-left-open';
import { notPressureTested } from './rules/not-pressure-tested';
import { notProvedZero } from './rules/not-proved-zero';
import { openUnderPressure } from './rules/open-under-pressure';
import { powerNotRestored } from './rules/power-not-restored';
import { pressureAboveRating } from './rules/pressure-above-rating';
import { pumpOntoPressure } from './rules/pump-onto-pressure';
import { recoveryTooShallow } from './rules/recovery-too-shallow';
import { refrigerantVented } from './rules/refrigerant-vented';
import { sectionNotEvacuated } from './rules/section-not-evacuated';
import { sectionNotRecovered } from './rules/section-not-recovered';
import { torchHazard } from './rules/torch-hazard';
import { vacuumBrokenWithAir } from './rules/vacuum-broken-with-air';
import { valvesOpenedEarly } from './rules/valves-opened-early';
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
  torchHazard,
  brazingWithoutNitrogen,
  brazingFlowRange,
  closureLeftIn,
  jointLeftOpen,
  notPressureTested,
  pressureAboveRating,
  pumpOntoPressure,
  vacuumBrokenWithAir,
  evacuatedCold,
  sectionNotEvacuated,
  decayTestMissing,
  decayLimitMissing,
  chargeIntoGas,
  valvesOpenedEarly,
];
