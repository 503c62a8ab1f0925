import type { Check } from './define';
import { chargeOverRoomLimit } from './rules/charge-over-room-limit';
import { chargedAsVapour } from './rules/charged-as-vapour';
import { ignitionSourcesUnchecked } from './rules/ignition-sources-unchecked';
import { leakSensorMissing } from './rules/leak-sensor-missing';
import { notMadeForRefrigerant } from './rules/not-made-for-refrigerant';
import { oilDoesNotSuit } from './rules/oil-does-not-suit';
import { overDesignPressure } from './rules/over-design-pressure';
import { refrigerantFromStockOnly } from './rules/refrigerant-from-stock-only';
import { refrigerantNotAllowed } from './rules/refrigerant-not-allowed';
import { shippedWithOtherRefrigerant } from './rules/shipped-with-other-refrigerant';
import { tubeNotRated } from './rules/tube-not-rated';
import { tubeNotStated } from './rules/tube-not-stated';
import { wrongCurve } from './rules/wrong-curve';

/** Whether materials, tools, people and equipment suit the refrigerant and each other. */
export const suitabilityChecks: readonly Check[] = [
  notMadeForRefrigerant,
  overDesignPressure,
  refrigerantNotAllowed,
  refrigerantFromStockOnly,
  shippedWithOtherRefrigerant,
  chargeOverRoomLimit,
  leakSensorMissing,
  ignitionSourcesUnchecked,
  tubeNotRated,
  tubeNotStated,
  oilDoesNotSuit,
  chargedAsVapour,
  wrongCurve,
];
