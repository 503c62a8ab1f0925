import type { Check } from './define';
import { accumulatorKept } from './rules/accumulator-kept';
import { adjustedBeforeRunning } from './rules/adjusted-before-running';
import { adjustedInCold } from './rules/adjusted-in-cold';
import { adjustedInHeating } from './rules/adjusted-in-heating';
import { adjustedThenRecovered } from './rules/adjusted-then-recovered';
import { airflowNotProved } from './rules/airflow-not-proved';
import { brazingFlowRange } from './rules/brazing-flow';
import { brazingWithoutNitrogen } from './rules/brazing-without-nitrogen';
import { burnoutCause } from './rules/burnout-cause';
import { burntCompressorKept } from './rules/burnt-compressor-kept';
import { chargeIntoGas } from './rules/charge-into-gas';
import { chargeStillIn } from './rules/charge-still-in';
import { chargedAfterStart } from './rules/charged-after-start';
import { checkedAfterStart } from './rules/checked-after-start';
import { circuitIncomplete } from './rules/circuit-incomplete';
import { circuitOutOfOrder } from './rules/circuit-out-of-order';
import { closedOnMadeJoint } from './rules/closed-on-made-joint';
import { closureLeftIn } from './rules/closure-left-in';
import { compressorWithoutRefrigerant } from './rules/compressor-without-refrigerant';
import { conversionNotCarriedThrough } from './rules/conversion-not-carried-through';
import { coreNotForAcid } from './rules/core-not-for-acid';
import { coresLeftOut } from './rules/cores-left-out';
import { decayLimitMissing } from './rules/decay-limit-missing';
import { decayTestMissing } from './rules/decay-test-missing';
import { drierBeforeFlush } from './rules/drier-before-flush';
import { drierNotRenewed } from './rules/drier-not-renewed';
import { drierOneWay } from './rules/drier-one-way';
import { drierOpenLong } from './rules/drier-open-long';
import { evacuatedCold } from './rules/evacuated-cold';
import { followUpMissing } from './rules/follow-up-missing';
import { heatGuardMissing } from './rules/heat-guard-missing';
import { heaterTooShort } from './rules/heater-too-short';
import { hotWorkWatchMissing } from './rules/hot-work-watch-missing';
import { instrumentsUnderTest } from './rules/instruments-under-test';
import { jointLeftOpen } from './rules/joint-left-open';
import { jointMadeOtherwise } from './rules/joint-made-otherwise';
import { labelMissing } from './rules/label-missing';
import { leakCheckMissing } from './rules/leak-check-missing';
import { leftUnattended } from './rules/left-unattended';
import { nextRoundUnsafe } from './rules/next-round-unsafe';
import { nitrogenOnCharge } from './rules/nitrogen-on-charge';
import { noEffect } from './rules/no-effect';
import { noFieldDrier } from './rules/no-field-drier';
import { notPressureTested } from './rules/not-pressure-tested';
import { notProvedZero } from './rules/not-proved-zero';
import { notPutBack } from './rules/not-put-back';
import { notStarted } from './rules/not-started';
import { oilRoundNotRun } from './rules/oil-round-not-run';
import { oilRoundsLate } from './rules/oil-rounds-late';
import { oldFlareReused } from './rules/old-flare-reused';
import { oneSeasonOnly } from './rules/one-season-only';
import { openUnderPressure } from './rules/open-under-pressure';
import { openedUnderVacuum } from './rules/opened-under-vacuum';
import { otherRefrigerant } from './rules/other-refrigerant';
import { partNotAsStated } from './rules/part-not-as-stated';
import { partStatedTwice } from './rules/part-stated-twice';
import { piercingValveLeftOn } from './rules/piercing-valve-left-on';
import { powerNotRestored } from './rules/power-not-restored';
import { pressureAboveRating } from './rules/pressure-above-rating';
import { processTubeUnsealed } from './rules/process-tube-unsealed';
import { pumpDownInVain } from './rules/pump-down-in-vain';
import { pumpOntoPressure } from './rules/pump-onto-pressure';
import { readTooSoon } from './rules/read-too-soon';
import { readWhileStanding } from './rules/read-while-standing';
import { recordMissing } from './rules/record-missing';
import { recoveredWhileRunning } from './rules/recovered-while-running';
import { recoveryBeyondSection } from './rules/recovery-beyond-section';
import { recoveryTooShallow } from './rules/recovery-too-shallow';
import { refrigerantNeverChanged } from './rules/refrigerant-never-changed';
import { refrigerantNotStated } from './rules/refrigerant-not-stated';
import { refrigerantVented } from './rules/refrigerant-vented';
import { removedAndNeeded } from './rules/removed-and-needed';
import { renewedUnderCharge } from './rules/renewed-under-charge';
import { sectionNotEvacuated } from './rules/section-not-evacuated';
import { sectionNotRecovered } from './rules/section-not-recovered';
import { sectionNotTested } from './rules/section-not-tested';
import { startedAgainstShutValve } from './rules/started-against-shut-valve';
import { suctionDrierLeftIn } from './rules/suction-drier-left-in';
import { suctionDrierMissing } from './rules/suction-drier-missing';
import { systemTakesInCharge } from './rules/system-takes-in-charge';
import { tagLeftOn } from './rules/tag-left-on';
import { torchHazard } from './rules/torch-hazard';
import { vacuumBrokenTooHigh } from './rules/vacuum-broken-too-high';
import { vacuumBrokenWithAir } from './rules/vacuum-broken-with-air';
import { valveLeftShut } from './rules/valve-left-shut';
import { valveNotAdjusted } from './rules/valve-not-adjusted';
import { valveWithoutPower } from './rules/valve-without-power';
import { valvesOpenedEarly } from './rules/valves-opened-early';
import { visitsOutOfOrder } from './rules/visits-out-of-order';
import { waterSideFull } from './rules/water-side-full';
import { wayBackUnsafe } from './rules/way-back-unsafe';
import { workWithoutLockOut } from './rules/work-without-lock-out';
import { writtenDownEarly } from './rules/written-down-early';
import { wrongChargeTarget } from './rules/wrong-charge-target';

/** Order of the work, and the state that each step leaves. */
export const orderChecks: readonly Check[] = [
  workWithoutLockOut,
  compressorWithoutRefrigerant,
  powerNotRestored,
  openUnderPressure,
  refrigerantVented,
  chargeStillIn,
  pumpDownInVain,
  sectionNotRecovered,
  valveWithoutPower,
  recoveredWhileRunning,
  renewedUnderCharge,
  recoveryBeyondSection,
  recoveryTooShallow,
  notProvedZero,
  torchHazard,
  heatGuardMissing,
  hotWorkWatchMissing,
  jointMadeOtherwise,
  brazingWithoutNitrogen,
  brazingFlowRange,
  closureLeftIn,
  closedOnMadeJoint,
  oldFlareReused,
  instrumentsUnderTest,
  jointLeftOpen,
  notPressureTested,
  pressureAboveRating,
  pumpOntoPressure,
  vacuumBrokenTooHigh,
  vacuumBrokenWithAir,
  evacuatedCold,
  sectionNotEvacuated,
  sectionNotTested,
  decayTestMissing,
  decayLimitMissing,
  chargeIntoGas,
  otherRefrigerant,
  valvesOpenedEarly,
  noFieldDrier,
  partNotAsStated,
  partStatedTwice,
  piercingValveLeftOn,
  processTubeUnsealed,
  waterSideFull,
  circuitIncomplete,
  circuitOutOfOrder,
  refrigerantNotStated,
  refrigerantNeverChanged,
  removedAndNeeded,
  drierNotRenewed,
  drierBeforeFlush,
  drierOpenLong,
  drierOneWay,
  burntCompressorKept,
  suctionDrierMissing,
  systemTakesInCharge,
  suctionDrierLeftIn,
  accumulatorKept,
  coreNotForAcid,
  coresLeftOut,
  notPutBack,
  valveLeftShut,
  tagLeftOn,
  startedAgainstShutValve,
  notStarted,
  chargedAfterStart,
  readWhileStanding,
  readTooSoon,
  adjustedInHeating,
  oneSeasonOnly,
  adjustedBeforeRunning,
  adjustedThenRecovered,
  valveNotAdjusted,
  wrongChargeTarget,
  adjustedInCold,
  heaterTooShort,
  airflowNotProved,
  burnoutCause,
  oilRoundsLate,
  oilRoundNotRun,
  checkedAfterStart,
  conversionNotCarriedThrough,
  followUpMissing,
  visitsOutOfOrder,
  labelMissing,
  leakCheckMissing,
  recordMissing,
  leftUnattended,
  nextRoundUnsafe,
  nitrogenOnCharge,
  openedUnderVacuum,
  writtenDownEarly,
  wayBackUnsafe,
  noEffect,
];
