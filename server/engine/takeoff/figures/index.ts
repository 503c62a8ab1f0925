import type { AnyRelation } from '../relation';
import { allowedLoss } from './allowed-loss';
import { brazingNitrogen } from './brazing-nitrogen';
import { carbonBalance } from './carbon-balance';
import { carbonEquivalent } from './carbon-equivalent';
import { massFlowRatio, pressureRatioChange, suctionVolumeRatio, valveSizeChange } from './conversion-comparison';
import { correctedTestReading } from './corrected-test-reading';
import { crewTime } from './crew-time';
import { criticalPath } from './critical-path';
import { cylinderAfterDraw } from './cylinder-after-draw';
import { cylinderContent } from './cylinder-content';
import { cylinderServicePressure } from './cylinder-service-pressure';
import { cylindersToBring } from './cylinders-to-bring';
import { decayLeakRate } from './decay-leak-rate';
import { designPressure } from './design-pressure';
import { dischargeTemperature } from './discharge-temperature';
import { doubleRiserLeastFlow, doubleRiserNumber } from './double-riser';
import { effectivePumpSpeed } from './effective-pump-speed';
import { equivalentLineLength } from './equivalent-line-length';
import { fillNitrogen } from './fill-nitrogen';
import { firstCharge } from './first-charge';
import { flammableChargeCap } from './flammable-charge-cap';
import { flushShots } from './flush-shots';
import { flushTime } from './flush-time';
import { followUpDays } from './follow-up-days';
import { goingBack } from './going-back';
import { hoseConductance } from './hose-conductance';
import { keepAwayDistance } from './keep-away-distance';
import { leakRate } from './leak-rate';
import { lineAllowance } from './line-allowance';
import { lineAllowanceInAll } from './line-allowance-in-all';
import { lineContent } from './line-content';
import { lineVelocity } from './line-velocity';
import { lineVolume } from './line-volume';
import { liquidLineTarget } from './liquid-line-target';
import { lowestRating } from './lowest-rating';
import { massFlow } from './mass-flow';
import { measuredSubcooling, measuredSuperheat } from './measured-difference';
import { mostCharge } from './most-charge';
import { nitrogenInAll } from './nitrogen-in-all';
import { oilFilm } from './oil-film';
import { oilInAll } from './oil-in-all';
import { oilLeft } from './oil-left';
import { oilRounds } from './oil-rounds';
import { oldOilShare } from './old-oil-share';
import { oxygenLeft } from './oxygen-left';
import { pressureDrop } from './pressure-drop';
import { pumpDownTime } from './pump-down-time';
import { purgeFlow } from './purge-flow';
import { purgeNitrogen } from './purge-nitrogen';
import { purgeVolumeChanges } from './purge-volume-changes';
import { reachableLevel } from './reachable-level';
import { readingChange } from './reading-change';
import { receiverCapacity } from './receiver-capacity';
import { recoveryCylindersNeeded } from './recovery-cylinders-needed';
import { recoveryInAll } from './recovery-in-all';
import { recoveryLevel } from './recovery-level';
import { recoveryLevelByLaw } from './recovery-level-by-law';
import { refrigerantInAll } from './refrigerant-in-all';
import { regulatorWindow } from './regulator-window';
import { reliefSetting } from './relief-setting';
import { riserFloodingNumber } from './riser-flooding-number';
import { roomChargeLimit } from './room-charge-limit';
import { roomConcentration } from './room-concentration';
import { safeFill } from './safe-fill';
import { saturationLoss } from './saturation-loss';
import {
  saturationBubblePressure,
  saturationDewPressure,
  saturationLiquidDensity,
  saturationVapourDensity,
} from './saturation-of';
import { saturationBubbleTemperature, saturationDewTemperature } from './saturation-temperature';
import { solventContainers } from './solvent-containers';
import { solventInAll } from './solvent-in-all';
import { solventInJob } from './solvent-in-job';
import { solventOfStep } from './solvent-of-step';
import { solventPerPass } from './solvent-per-pass';
import { spaceVolume } from './space-volume';
import { spentSolventMass } from './spent-solvent-mass';
import { spentSolventVolume } from './spent-solvent-volume';
import { staticHead } from './static-head';
import { storedEnergy } from './stored-energy';
import { subcoolingLeft } from './subcooling-left';
import { suctionDensity } from './suction-density';
import { suctionLineTarget } from './suction-line-target';
import { targetSuperheat } from './target-superheat';
import { testPressure } from './test-pressure';
import { totalCharge } from './total-charge';
import { trapVolume } from './trap-volume';
import { tubeBore } from './tube-bore';
import { tubeMass } from './tube-mass';
import { tubeWorkingPressure } from './tube-working-pressure';
import { tubeWorkingPressureEuropean } from './tube-working-pressure-european';
import { usedOil } from './used-oil';
import { waitingTime } from './waiting-time';
import { waterBoiling } from './water-boiling';
import { wettedArea } from './wetted-area';
import { workingTime } from './working-time';

/** Every relation that the engine knows, in the order of the groups of the list of what it computes. */
export const relations: readonly AnyRelation[] = [
  spaceVolume,
  tubeBore,
  lineVolume,
  wettedArea,
  tubeMass,
  tubeWorkingPressure,
  tubeWorkingPressureEuropean,
  saturationBubblePressure,
  saturationDewPressure,
  saturationLiquidDensity,
  saturationVapourDensity,
  saturationBubbleTemperature,
  saturationDewTemperature,
  recoveryInAll,
  cylinderServicePressure,
  recoveryCylindersNeeded,
  recoveryLevel,
  recoveryLevelByLaw,
  safeFill,
  solventInJob,
  solventOfStep,
  flushShots,
  flushTime,
  solventContainers,
  solventInAll,
  solventPerPass,
  spentSolventMass,
  spentSolventVolume,
  trapVolume,
  nitrogenInAll,
  brazingNitrogen,
  cylinderAfterDraw,
  cylinderContent,
  cylindersToBring,
  fillNitrogen,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  oxygenLeft,
  allowedLoss,
  correctedTestReading,
  designPressure,
  keepAwayDistance,
  lowestRating,
  readingChange,
  regulatorWindow,
  reliefSetting,
  storedEnergy,
  testPressure,
  decayLeakRate,
  effectivePumpSpeed,
  hoseConductance,
  pumpDownTime,
  reachableLevel,
  waterBoiling,
  refrigerantInAll,
  firstCharge,
  lineAllowance,
  lineAllowanceInAll,
  lineContent,
  mostCharge,
  receiverCapacity,
  totalCharge,
  liquidLineTarget,
  measuredSubcooling,
  measuredSuperheat,
  suctionLineTarget,
  targetSuperheat,
  oilFilm,
  oilLeft,
  oilRounds,
  oldOilShare,
  equivalentLineLength,
  lineVelocity,
  massFlow,
  pressureDrop,
  riserFloodingNumber,
  doubleRiserNumber,
  doubleRiserLeastFlow,
  saturationLoss,
  staticHead,
  subcoolingLeft,
  suctionDensity,
  flammableChargeCap,
  roomChargeLimit,
  roomConcentration,
  massFlowRatio,
  pressureRatioChange,
  suctionVolumeRatio,
  valveSizeChange,
  dischargeTemperature,
  oilInAll,
  usedOil,
  carbonEquivalent,
  carbonBalance,
  leakRate,
  followUpDays,
  workingTime,
  waitingTime,
  criticalPath,
  goingBack,
  crewTime,
];

/** A relation by its name; undefined where there is none. */
export const relationNamed = (name: string): AnyRelation | undefined => relations.find((one) => one.name === name);

export {
  allowedLoss,
  brazingNitrogen,
  carbonBalance,
  carbonEquivalent,
  correctedTestReading,
  crewTime,
  criticalPath,
  cylinderAfterDraw,
  cylinderContent,
  cylinderServicePressure,
  cylindersToBring,
  decayLeakRate,
  designPressure,
  dischargeTemperature,
  doubleRiserLeastFlow,
  doubleRiserNumber,
  effectivePumpSpeed,
  equivalentLineLength,
  fillNitrogen,
  firstCharge,
  flammableChargeCap,
  flushShots,
  flushTime,
  followUpDays,
  goingBack,
  hoseConductance,
  keepAwayDistance,
  leakRate,
  lineAllowance,
  lineAllowanceInAll,
  lineContent,
  lineVelocity,
  lineVolume,
  liquidLineTarget,
  lowestRating,
  massFlow,
  massFlowRatio,
  measuredSubcooling,
  measuredSuperheat,
  mostCharge,
  nitrogenInAll,
  oilFilm,
  oilInAll,
  oilLeft,
  oilRounds,
  oldOilShare,
  oxygenLeft,
  pressureDrop,
  pressureRatioChange,
  pumpDownTime,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  reachableLevel,
  readingChange,
  receiverCapacity,
  recoveryCylindersNeeded,
  recoveryInAll,
  recoveryLevel,
  recoveryLevelByLaw,
  refrigerantInAll,
  regulatorWindow,
  reliefSetting,
  riserFloodingNumber,
  roomChargeLimit,
  roomConcentration,
  safeFill,
  saturationBubblePressure,
  saturationBubbleTemperature,
  saturationDewPressure,
  saturationDewTemperature,
  saturationLiquidDensity,
  saturationLoss,
  saturationVapourDensity,
  solventContainers,
  solventInAll,
  solventInJob,
  solventOfStep,
  solventPerPass,
  spaceVolume,
  spentSolventMass,
  spentSolventVolume,
  staticHead,
  storedEnergy,
  subcoolingLeft,
  suctionDensity,
  suctionLineTarget,
  suctionVolumeRatio,
  targetSuperheat,
  testPressure,
  totalCharge,
  trapVolume,
  tubeBore,
  tubeMass,
  tubeWorkingPressure,
  tubeWorkingPressureEuropean,
  usedOil,
  valveSizeChange,
  waitingTime,
  waterBoiling,
  wettedArea,
  workingTime,
};
