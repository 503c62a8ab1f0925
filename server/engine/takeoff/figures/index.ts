import type { AnyRelation } from '../relation';
import { brazingNitrogen } from './brazing-nitrogen';
import { cylinderAfterDraw } from './cylinder-after-draw';
import { cylinderContent } from './cylinder-content';
import { cylinderServicePressure } from './cylinder-service-pressure';
import { cylindersToBring } from './cylinders-to-bring';
import { fillNitrogen } from './fill-nitrogen';
import { flushShots } from './flush-shots';
import { flushTime } from './flush-time';
import { lineVolume } from './line-volume';
import { oxygenLeft } from './oxygen-left';
import { purgeFlow } from './purge-flow';
import { purgeNitrogen } from './purge-nitrogen';
import { purgeVolumeChanges } from './purge-volume-changes';
import { recoveryCylindersNeeded } from './recovery-cylinders-needed';
import { recoveryLevel } from './recovery-level';
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
import { trapVolume } from './trap-volume';
import { tubeBore } from './tube-bore';
import { tubeMass } from './tube-mass';
import { vacuumBreakNitrogen } from './vacuum-break-nitrogen';
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
  flammableChargeCap,
  roomChargeLimit,
  roomConcentration,
];

/** A relation by its name; undefined where there is none. */
export const relationNamed = (name: string): AnyRelation | undefined => relations.find((one) => one.name === name);

export {
  brazingNitrogen,
  cylinderAfterDraw,
  cylinderContent,
  cylinderServicePressure,
  cylindersToBring,
  fillNitrogen,
  flammableChargeCap,
  flushShots,
  flushTime,
  lineVolume,
  oxygenLeft,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  recoveryCylindersNeeded,
  recoveryLevel,
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
  trapVolume,
  tubeBore,
  tubeMass,
  vacuumBreakNitrogen,
  wettedArea,
};
