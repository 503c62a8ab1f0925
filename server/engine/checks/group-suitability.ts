import type { Check } from './define';
import { burntGasMixed } from './rules/burnt-gas-mixed';
import { carbonDioxideFreezes } from './rules/carbon-dioxide-freezes';
import { certificateDoesNotCover } from './rules/certificate-does-not-cover';
import { chargeOverCap } from './rules/charge-over-cap';
import { chargeOverRoomLimit } from './rules/charge-over-room-limit';
import { chargedAsVapour } from './rules/charged-as-vapour';
import { detectorDoesNotSuit } from './rules/detector-does-not-suit';
import { flammableJointUnchecked } from './rules/flammable-joint-unchecked';
import { ignitionSourcesUnchecked } from './rules/ignition-sources-unchecked';
import { leakSensorMissing } from './rules/leak-sensor-missing';
import { lineSizeUnlikely } from './rules/line-size-unlikely';
import { notMadeForRefrigerant } from './rules/not-made-for-refrigerant';
import { oilDoesNotReturn } from './rules/oil-does-not-return';
import { oilDoesNotSuit } from './rules/oil-does-not-suit';
import { oldOilLeft } from './rules/old-oil-left';
import { overDesignPressure } from './rules/over-design-pressure';
import { oxygenFalls } from './rules/oxygen-falls';
import { pumpDoesNotSuit } from './rules/pump-does-not-suit';
import { recoveryCylinderOtherGas } from './rules/recovery-cylinder-other-gas';
import { recoveryCylinderOverfilled } from './rules/recovery-cylinder-overfilled';
import { recoveryCylinderPastRetest } from './rules/recovery-cylinder-past-retest';
import { recoveryCylinderRating } from './rules/recovery-cylinder-rating';
import { recoveryMachineDoesNotSuit } from './rules/recovery-machine-does-not-suit';
import { refrigerantFromStockOnly } from './rules/refrigerant-from-stock-only';
import { refrigerantNotAllowed } from './rules/refrigerant-not-allowed';
import { shippedWithOtherRefrigerant } from './rules/shipped-with-other-refrigerant';
import { solventBurns } from './rules/solvent-burns';
import { solventDoesNotSuit } from './rules/solvent-does-not-suit';
import { solventExpired } from './rules/solvent-expired';
import { solventVapour } from './rules/solvent-vapour';
import { standingPressureOverPlate } from './rules/standing-pressure-over-plate';
import { toolNotBrought } from './rules/tool-not-brought';
import { tubeNotRated } from './rules/tube-not-rated';
import { tubeNotStated } from './rules/tube-not-stated';
import { vapourLineTooSmall } from './rules/vapour-line-too-small';
import { warmingOverLimit } from './rules/warming-over-limit';
import { wrongCurve } from './rules/wrong-curve';

/** Whether materials, tools, people and equipment suit the refrigerant and each other. */
export const suitabilityChecks: readonly Check[] = [
  notMadeForRefrigerant,
  overDesignPressure,
  standingPressureOverPlate,
  refrigerantNotAllowed,
  refrigerantFromStockOnly,
  warmingOverLimit,
  shippedWithOtherRefrigerant,
  chargeOverRoomLimit,
  chargeOverCap,
  leakSensorMissing,
  ignitionSourcesUnchecked,
  flammableJointUnchecked,
  tubeNotRated,
  tubeNotStated,
  oilDoesNotSuit,
  oldOilLeft,
  oilDoesNotReturn,
  vapourLineTooSmall,
  lineSizeUnlikely,
  carbonDioxideFreezes,
  chargedAsVapour,
  wrongCurve,
  recoveryMachineDoesNotSuit,
  pumpDoesNotSuit,
  detectorDoesNotSuit,
  toolNotBrought,
  certificateDoesNotCover,
  recoveryCylinderOtherGas,
  recoveryCylinderOverfilled,
  recoveryCylinderPastRetest,
  recoveryCylinderRating,
  burntGasMixed,
  solventDoesNotSuit,
  solventExpired,
  solventBurns,
  solventVapour,
  oxygenFalls,
];
