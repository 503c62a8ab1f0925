import { fact } from './fact';
import { fluidOunce, foot, psig } from './table-units';

const estimate =
  'engineering estimate for the slug method; no public standard gives one: set it from the solvent’s sheet';

/** Share of the line's volume that goes in as liquid on each pass: the liquid travels as a wetting slug. */
export const solventShare = fact('share', 0.1, 0.15, estimate, 'practice');
/** Least that goes in on each pass, however short the line: 8 fl-oz. */
export const solventLeast = fact('volume', 8 * fluidOunce, 8 * fluidOunce, estimate, 'practice');
/** The circulating method fills the line completely. */
export const circulatingShare = fact(
  'share',
  1,
  1.2,
  'line full and its reservoir: common practice, no source',
  'practice',
);
/** Length of tube that fills by its own bend beyond the part that lies below the overflow. */
export const trapFactor = fact('share', 1.1, 1.1, estimate, 'practice');
export const passesNormal = fact('count', 2, 3, 'common practice, no source', 'practice');
export const passesBurnout = fact('count', 3, 5, 'common practice, no source', 'practice');
/** Time of one shot into one line: under it the line is not wetted, over it the shot is split. */
export const shotTime = fact('time', 30, 90, '30 to 90 s a line: common practice, no source', 'practice');
export const chasePressure = fact(
  'pressure',
  psig(100),
  psig(150),
  'shot chased with nitrogen at 100 to 150 psig: common practice, no source',
  'practice',
);
/** Longer pieces are flushed in two, or with twice the shots. */
export const longestPiece = fact('length', 50 * foot, 50 * foot, 'about 50 ft: common practice, no source', 'practice');
/** Oil film that a blown-out, unflushed line keeps on its wall. */
export const oilFilm = fact(
  'length',
  0.05e-3,
  0.1e-3,
  'a tenth of a millimetre at most, an estimate: common practice, no source',
  'practice',
);
/** Density of refrigeration oil, kg/m3. */
export const oilDensity = fact(
  'density',
  880,
  990,
  'mineral about 880 to 910, polyolester 970 to 990 kg/m3: from memory',
  'memory',
);
/** Share of the solvent that does not come back in the catch container: it evaporates or stays on the wall. */
export const solventLost = fact(
  'share',
  0,
  0.15,
  'up to 15 % evaporates or stays on the wall, an estimate: common practice, no source',
  'practice',
);
/** A solvent that boils above this leaves slowly and shows as a plateau in the evacuation, K. */
export const slowSolventBoilsAbove = fact(
  'temperature',
  333.15,
  333.15,
  'about 60 degC: common practice, no source',
  'practice',
);
/** Catch containers are filled to this share at most. */
export const catchFill = fact('share', 0.8, 0.8, 'room for foam and expansion: common practice, no source', 'practice');
/** The room's air changes for solvent work. */
export const ventilationChanges = fact(
  'count',
  10,
  10,
  'at least 10 air changes an hour: common practice, no source',
  'practice',
);
