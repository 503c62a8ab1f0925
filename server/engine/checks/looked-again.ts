import { chargeIntoGas } from './rules/charge-into-gas';
import { chargeStillIn } from './rules/charge-still-in';
import { closureLeftIn } from './rules/closure-left-in';
import { compressorWithoutRefrigerant } from './rules/compressor-without-refrigerant';
import { coresLeftOut } from './rules/cores-left-out';
import { decayTestMissing } from './rules/decay-test-missing';
import { evacuationNotDeep } from './rules/evacuation-not-deep';
import { flushNoOutlet } from './rules/flush-no-outlet';
import { flushNotPurged } from './rules/flush-not-purged';
import { jointLeftOpen } from './rules/joint-left-open';
import { lineNotDisconnected } from './rules/line-not-disconnected';
import { notPressureTested } from './rules/not-pressure-tested';
import { notPutBack } from './rules/not-put-back';
import { openUnderPressure } from './rules/open-under-pressure';
import { powerNotRestored } from './rules/power-not-restored';
import { pressureAboveRating } from './rules/pressure-above-rating';
import { pumpOntoPressure } from './rules/pump-onto-pressure';
import { refrigerantVented } from './rules/refrigerant-vented';
import { sectionNotEvacuated } from './rules/section-not-evacuated';
import { sectionNotRecovered } from './rules/section-not-recovered';
import { torchHazard } from './rules/torch-hazard';
import { vacuumBrokenWithAir } from './rules/vacuum-broken-with-air';
import { valveLeftShut } from './rules/valve-left-shut';
import { valvesOpenedEarly } from './rules/valves-opened-early';
import { wetWithSolvent } from './rules/wet-with-solvent';
import { workWithoutLockOut } from './rules/work-without-lock-out';

/** Checks whose finding may come with the second time round alone, the gravest first. */
export const lookedAgain = {
  steps: [
    openUnderPressure,
    torchHazard,
    refrigerantVented,
    chargeStillIn,
    workWithoutLockOut,
    pumpOntoPressure,
    pressureAboveRating,
    compressorWithoutRefrigerant,
    valvesOpenedEarly,
    vacuumBrokenWithAir,
    lineNotDisconnected,
    flushNoOutlet,
    flushNotPurged,
    closureLeftIn,
    decayTestMissing,
  ],
  wholes: [
    jointLeftOpen,
    sectionNotRecovered,
    chargeIntoGas,
    notPressureTested,
    sectionNotEvacuated,
    evacuationNotDeep,
    wetWithSolvent,
    powerNotRestored,
    notPutBack,
    valveLeftShut,
    coresLeftOut,
  ],
} as const;
