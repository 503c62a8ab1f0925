import type { Confidence } from './source';
import { inch, millimetre } from './table-units';
import type { AcrTable, EnTable } from './tubes.schema';
import acrData from './tubes-acr.json';
import enData from './tubes-en.json';

export type TubeStandard = 'ACR' | 'EN';
export type Temper = 'annealed' | 'drawn';

/** One tube of a standard, in metres. A tolerance is null where the standard's own was not seen. */
export interface Tube {
  readonly standard: TubeStandard;
  /** The trade size as the standard names it: `7/8 in`, `22 mm`. */
  readonly name: string;
  readonly temper: Temper;
  readonly outsideDiameter: number;
  readonly wall: number;
  readonly bore: number;
  readonly diameterTolerance: number | null;
  readonly wallTolerance: number | null;
  readonly source: string;
  readonly confidence: Confidence;
}

const acr = acrData as AcrTable;
const en = enData as EnTable;

/** B280 sizes as printed. The thin 3/4 in coil comes first among its size, since coils are what line sets are made of. */
const acrTubes: readonly Tube[] = acr.rows.map((row) => ({
  standard: 'ACR',
  name: `${row.size} in`,
  temper: row.temper,
  outsideDiameter: row.outsideDiameter * inch,
  wall: row.wall * inch,
  bore: (row.outsideDiameter - 2 * row.wall) * inch,
  diameterTolerance: row.diameterTolerance * inch,
  wallTolerance: row.wallTolerance * inch,
  source: acr.source,
  confidence: acr.confidence,
}));

const enTubes: readonly Tube[] = en.rows.map((row) => ({
  standard: 'EN',
  name: row.series === 'inch' ? `${row.size} in` : `${row.size} mm`,
  temper: 'annealed',
  outsideDiameter: row.outsideDiameter * millimetre,
  wall: row.wall * millimetre,
  bore: (row.outsideDiameter - 2 * row.wall) * millimetre,
  diameterTolerance: null,
  wallTolerance: null,
  source: en.source,
  confidence: en.confidence,
}));

export const tubes: readonly Tube[] = [...acrTubes, ...enTubes];

/** Outside diameters count as one size within 0.2 mm: wider than any tolerance, closer than any two sizes. */
const sameSize = 0.2e-3;

const spelled = (size: string): string =>
  size
    .trim()
    .replace(/\s*(inch|in|")$/i, ' in')
    .replace(/\s*mm$/i, ' mm')
    .replace(/\s+/g, ' ')
    .replace(/(\d) (\d+\/)/, '$1-$2');

/** Coils run to 1-5/8 in; larger sizes are only drawn, so that the one there is must be meant. */
const ofTemper = (found: readonly Tube[], temper: Temper | undefined): Tube | undefined =>
  temper === undefined
    ? (found.find((tube) => tube.temper === 'annealed') ?? found[0])
    : found.find((tube) => tube.temper === temper);

/**
 * The tube of a standard by its trade size (`7/8 in`, `22 mm`) or its outside diameter in metres.
 * Without a temper the annealed coil is meant, which has the lower rating; undefined where the standard has no such size.
 */
export const tubeNamed = (size: string | number, standard: TubeStandard, temper?: Temper): Tube | undefined => {
  const name = typeof size === 'string' ? spelled(size) : null;
  const found = tubes.filter(
    (tube) =>
      tube.standard === standard &&
      (typeof size === 'string' ? tube.name === name : Math.abs(tube.outsideDiameter - size) <= sameSize),
  );
  return ofTemper(found, temper);
};

/** The tube of a standard whose outside diameter in metres is nearest, for "did you mean". */
export const nearestTube = (outsideDiameter: number, standard: TubeStandard, temper?: Temper): Tube => {
  const ordered = tubes
    .filter((tube) => tube.standard === standard)
    .sort((a, b) => Math.abs(a.outsideDiameter - outsideDiameter) - Math.abs(b.outsideDiameter - outsideDiameter));
  const first = ordered[0]!;
  const size = ordered.filter((tube) => tube.outsideDiameter === first.outsideDiameter);
  return ofTemper(size, temper) ?? first;
};
