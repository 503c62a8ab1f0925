import type { AnyRelation } from '../relation';
import { allowedLoss } from './allowed-loss';
import { brazingNitrogen } from './brazing-nitrogen';
import { correctedTestReading } from './corrected-test-reading';
import { cylinderAfterDraw } from './cylinder-after-draw';
import { cylinderContent } from './cylinder-content';
import { cylinderServicePressure } from './cylinder-service-pressure';
import { cylindersToBring } from './cylinders-to-bring';
import { decayLeakRate } from './decay-leak-rate';
import { designPressure } from './design-pressure';
import { effectivePumpSpeed } from './effective-pump-speed';
import { fillNitrogen } from './fill-nitrogen';
import { firstCharge } from './first-charge';
import { flushShots } from './flush-shots';
import { flushTime } from './flush-time';
import { hoseConductance } from './hose-conductance';
import { keepAwayDistance } from './keep-away-distance';
import { lineAllowance } from './line-allowance';
import { lineContent } from './line-content';
import { lineVolume } from './line-volume';
import { lowestRating } from './lowest-rating';
import { measuredSubcooling, measuredSuperheat } from './measured-readings';
import { mostCharge } from './most-charge';
import { oilFilm } from './oil-film';
import { oilLeft } from './oil-left';
import { oilRounds } from './oil-rounds';
import { oldOilShare } from './old-oil-share';
import { oxygenLeft } from './oxygen-left';
import { pumpDownTime } from './pump-down-time';
import { purgeFlow } from './purge-flow';
import { purgeNitrogen } from './purge-nitrogen';
import { purgeVolumeChanges } from './purge-volume-changes';
import { reachableLevel } from './reachable-level';
import { readingChange } from './reading-change';
import { receiverCapacity } from './receiver-capacity';
import { recoveryCylindersNeeded } from './recovery-cylinders-needed';
import { recoveryLevel } from './recovery-level';
import { reliefSetting } from './relief-setting';
import { flammableChargeCap, roomChargeLimit, roomConcentration } from './room-limits';
import { safeFill } from './safe-fill';
import {
  saturationBubblePressure,
  saturationDewPressure,
  saturationLiquidDensity,
  saturationVapourDensity,
} from './saturation-of';
import { saturationBubbleTemperature, saturationDewTemperature } from './saturation-temperature';
import { solventContainers } from './solvent-containers';
import { solventInAll } from './solvent-in-all';
import { solventPerPass } from './solvent-per-pass';
import { spentSolventMass } from './spent-solvent-mass';
import { spentSolventVolume } from './spent-solvent-volume';
import { storedEnergy } from './stored-energy';
import { liquidLineTarget, suctionLineTarget } from './target-readings';
import { targetSuperheat } from './target-superheat';
import { testPressure } from './test-pressure';
import { totalCharge } from './total-charge';
import { trapVolume } from './trap-volume';
import { tubeBore } from './tube-bore';
import { tubeMass } from './tube-mass';
import { vacuumBreakNitrogen } from './vacuum-break-nitrogen';
import { waterBoiling } from './water-boiling';
import { wettedArea } from './wetted-area';

/** Every relation that the engine knows, in the order of the groups of the list of what it computes. */
export const relations: readonly AnyRelation[] = [
  tubeBore,
  lineVolume,
  wettedArea,
  tubeMass,
  saturationBubblePressure,
  saturationDewPressure,
  saturationLiquidDensity,
  saturationVapourDensity,
  saturationBubbleTemperature,
  saturationDewTemperature,
  cylinderServicePressure,
  recoveryCylindersNeeded,
  recoveryLevel,
  safeFill,
  flushShots,
  flushTime,
  solventContainers,
  solventInAll,
  solventPerPass,
  spentSolventMass,
  spentSolventVolume,
  trapVolume,
  brazingNitrogen,
  cylinderAfterDraw,
  cylinderContent,
  cylindersToBring,
  fillNitrogen,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  vacuumBreakNitrogen,
  oxygenLeft,
  allowedLoss,
  correctedTestReading,
  designPressure,
  keepAwayDistance,
  lowestRating,
  readingChange,
  reliefSetting,
  storedEnergy,
  testPressure,
  decayLeakRate,
  effectivePumpSpeed,
  hoseConductance,
  pumpDownTime,
  reachableLevel,
  waterBoiling,
  firstCharge,
  lineAllowance,
  lineContent,
  mostCharge,
  receiverCapacity,
  totalCharge,
  measuredSubcooling,
  measuredSuperheat,
  liquidLineTarget,
  suctionLineTarget,
  targetSuperheat,
  oilFilm,
  oilLeft,
  oilRounds,
  oldOilShare,
  flammableChargeCap,
  roomChargeLimit,
  roomConcentration,
];

/** A relation by its name; undefined where there is none. */
export const relationNamed = (name: string): AnyRelation | undefined => relations.find((one) => one.name === name);

export {
  allowedLoss,
  brazingNitrogen,
  correctedTestReading,
  cylinderAfterDraw,
  cylinderContent,
  cylinderServicePressure,
  cylindersToBring,
  decayLeakRate,
  designPressure,
  effectivePumpSpeed,
  fillNitrogen,
  firstCharge,
  flammableChargeCap,
  flushShots,
  flushTime,
  hoseConductance,
  keepAwayDistance,
  lineAllowance,
  lineContent,
  lineVolume,
  liquidLineTarget,
  lowestRating,
  measuredSubcooling,
  measuredSuperheat,
  mostCharge,
  oilFilm,
  oilLeft,
  oilRounds,
  oldOilShare,
  oxygenLeft,
  pumpDownTime,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  reachableLevel,
  readingChange,
  receiverCapacity,
  recoveryCylindersNeeded,
  recoveryLevel,
  reliefSetting,
  roomChargeLimit,
  roomConcentration,
  safeFill,
  saturationBubblePressure,
  saturationBubbleTemperature,
  saturationDewPressure,
  saturationDewTemperature,
  saturationLiquidDensity,
  saturationVapourDensity,
  solventContainers,
  solventInAll,
  solventPerPass,
  spentSolventMass,
  spentSolventVolume,
  storedEnergy,
  suctionLineTarget,
  targetSuperheat,
  testPressure,
  totalCharge,
  trapVolume,
  tubeBore,
  tubeMass,
  vacuumBreakNitrogen,
  waterBoiling,
  wettedArea,
};
