import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import { contentOf, nitrogen, nitrogenMass, standardTemperature } from '../properties';
import type { Entry } from '../walk/walk';
import type { Draw } from './draws';
import { brought, fact, factOf, pieces, priceOf, usual } from './stock-data';

/** A nitrogen cylinder on the job: how full it is now. */
interface Cylinder {
  readonly name: string;
  /** Pa absolute, as it comes to the job. */
  readonly start: number;
  /** m3. */
  readonly waterVolume: number;
  readonly price: string | null;
  /** kg that is in it. */
  mass: number;
}

/** One draw of the job in the order of the work: mass in kg, and the pressure that the step asks, Pa absolute. */
export interface PlannedDraw {
  readonly entry: Entry;
  readonly mass: number;
  readonly least: number | null;
}

export interface NitrogenRun {
  /** What each cylinder starts with and has left, Pa absolute, in the order of use. */
  readonly cylinders: readonly {
    readonly name: string;
    readonly start: number;
    readonly left: number;
    /** The shop's price of it, as it is written there. */
    readonly price: string | null;
  }[];
  /** Steps at which a cylinder is changed, because the one before cannot give the pressure asked. */
  readonly changes: readonly { readonly entry: Entry; readonly from: string; readonly to: string }[];
  /** The first step that the stock cannot serve, and what it lacks from there on in all, kg. */
  readonly short: { readonly entry: Entry; readonly mass: number } | null;
  /** Pressure left in the cylinder in use after each step that draws, Pa absolute. */
  readonly after: ReadonlyMap<Entry, number>;
  /** Whether the stock is stated; without it, cylinders of the shop's largest size are taken as they are needed. */
  readonly stated: boolean;
}

/**
 * Draws nitrogen cylinder by cylinder. Real-gas density; a cylinder gives what is in it above the pressure that the step
 * asks, and the next one is taken when it cannot. A cylinder is filled at 70 °F, as contents are stated, and stands at the
 * outdoor temperature on the job: in the cold it reads less and keeps more back.
 */
export function runNitrogen(plan: Plan, draws: readonly PlannedDraw[]): NitrogenRun {
  const stated = plan.bring !== null;
  const temperature = cylinderTemperature(plan);
  const stock: Cylinder[] = [];
  for (const item of brought(plan, 'nitrogen')) {
    for (const name of pieces(item)) {
      const cylinder = fill(plan, item.declaration, name, temperature, factOf(item.bound, 'at', plan)?.quantity?.low);
      if (cylinder) stock.push(cylinder);
    }
  }
  const size = (declaration: Declaration): number =>
    fact(declaration, 'water-volume', 'volume', plan)?.quantity?.low ?? 0;
  const spare = stated ? null : usual(plan, 'nitrogen-cylinder', size);
  const used: Cylinder[] = [];
  const changes: NitrogenRun['changes'][number][] = [];
  const after = new Map<Entry, number>();
  const short: { entry: Entry; mass: number }[] = [];
  let current = take();

  function take(): Cylinder | null {
    const next =
      stock.shift() ?? (spare ? fill(plan, spare, `${spare.name} no. ${used.length + 1}`, temperature) : null);
    if (next) used.push(next);
    return next;
  }

  // What stays in a cylinder at a pressure takes a search in the real-gas equation; few pressures are asked on a job.
  const keeps = new Map<number, number>();

  /** What a cylinder gives at the pressure that a step asks, kg. */
  function available(cylinder: Cylinder, draw: PlannedDraw): number {
    if (draw.least === null) return cylinder.mass;
    const least = Math.max(draw.least, plan.site.atmosphere);
    let density = keeps.get(least);
    if (density === undefined) {
      density = contentOf(nitrogen, 1, least, temperature) ?? 0;
      keeps.set(least, density);
    }
    return Math.max(0, cylinder.mass - density * cylinder.waterVolume);
  }

  for (const draw of draws) {
    let left = draw.mass;
    while (left > 1e-9) {
      if (!current) {
        // What the cylinders still hold serves a step that asks for less pressure than the one that they failed.
        for (const each of used) {
          const gives = Math.min(left, available(each, draw));
          each.mass -= gives;
          left -= gives;
        }
        if (left > 1e-9) short.push({ entry: draw.entry, mass: left });
        break;
      }
      const gives = Math.min(left, available(current, draw));
      current.mass -= gives;
      left -= gives;
      if (left <= 1e-9) break;
      const from = current.name;
      // A size that is too small for a single draw would never end it.
      if (spare && gives <= 0 && used.length > 200) {
        short.push({ entry: draw.entry, mass: left });
        break;
      }
      current = take();
      if (current) changes.push({ entry: draw.entry, from, to: current.name });
    }
    if (current) after.set(draw.entry, pressureIn(current, temperature));
  }
  return {
    cylinders: used.map((each) => ({
      name: each.name,
      start: each.start,
      left: pressureIn(each, temperature),
      price: each.price,
    })),
    changes,
    short: short[0] ? { entry: short[0].entry, mass: short.reduce((sum, each) => sum + each.mass, 0) } : null,
    after,
    stated,
  };
}

/** Temperature of the cylinders on the job, K: outdoors, where the site says it and the tables of nitrogen reach it. */
export function cylinderTemperature(plan: Plan): number {
  const [coldest, hottest] = nitrogen.temperatureRange;
  const outdoors = plan.site.outdoors?.quantity.low ?? standardTemperature;
  return Math.min(hottest, Math.max(coldest, outdoors));
}

/** A cylinder as it comes to the job: at the pressure that `bring` states, read there, else full, as filled at 70 °F. */
function fill(plan: Plan, declaration: Declaration, name: string, temperature: number, at?: number): Cylinder | null {
  const waterVolume = fact(declaration, 'water-volume', 'volume', plan)?.quantity?.low;
  const full = fact(declaration, 'full', 'pressure', plan)?.quantity?.low;
  if (waterVolume === undefined || (at ?? full) === undefined) return null;
  const mass =
    at === undefined
      ? contentOf(nitrogen, waterVolume, full!, standardTemperature)
      : contentOf(nitrogen, waterVolume, at, temperature);
  if (mass === null) return null;
  const cylinder = { name, start: 0, waterVolume, price: priceOf(declaration), mass };
  return { ...cylinder, start: at ?? pressureIn(cylinder, temperature) };
}

const pressureIn = (cylinder: Cylinder, temperature: number): number =>
  nitrogen.pressure(cylinder.mass / cylinder.waterVolume, temperature) ?? 0;

/** Mass of a draw of nitrogen, kg. */
export const massOf = (draw: Extract<Draw, { of: 'nitrogen' }>): number => nitrogenMass(draw.volume.high);
