import type { AnyRelation } from '../relation';
import { flushShots } from './flush-shots';
import { flushTime } from './flush-time';
import { lineVolume } from './line-volume';
import { solventContainers } from './solvent-containers';
import { solventInAll } from './solvent-in-all';
import { solventPerPass } from './solvent-per-pass';
import { spentSolventMass } from './spent-solvent-mass';
import { spentSolventVolume } from './spent-solvent-volume';
import { trapVolume } from './trap-volume';
import { tubeBore } from './tube-bore';
import { tubeMass } from './tube-mass';
import { wettedArea } from './wetted-area';

/** Every relation that the engine knows, in the order of the groups of the list of what it computes. */
export const relations: readonly AnyRelation[] = [
  tubeBore,
  lineVolume,
  wettedArea,
  tubeMass,
  trapVolume,
  solventPerPass,
  solventInAll,
  flushTime,
  flushShots,
  solventContainers,
  spentSolventVolume,
  spentSolventMass,
];
