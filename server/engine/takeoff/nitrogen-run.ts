import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import { contentOf, nitrogen, nitrogenMass, standardTemperature } from '../properties';
import type { Entry } from '../walk/walk';
import type { Draw } from './draws';
import { brought, fact, usual } from './stock-data';

/** A nitrogen cylinder on the job: how full it is now. */
interface Cylinder {
  readonly name: string;
  /** m3. */
  readonly waterVolume: number;
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
  /** What each cylinder has left, Pa absolute, in the order of use. */
  readonly cylinders: readonly { readonly name: string; readonly left: number }[];
  /** Steps at which a cylinder is changed, because the one before cannot give the pressure asked. */
  readonly changes: readonly { readonly entry: Entry; readonly from: string; readonly to: string }[];
  /** The first step that the stock cannot serve, and what it lacks, kg. */
  readonly short: { readonly entry: Entry; readonly mass: number } | null;
  /** Pressure left in the cylinder in use after each step that draws, Pa absolute. */
  readonly after: ReadonlyMap<Entry, number>;
  /** Whether the stock is stated; without it, cylinders of the shop's largest size are taken as they are needed. */
  readonly stated: boolean;
}

/**
 * Draws nitrogen cylinder by cylinder. Real-gas density; a cylinder gives what is in it above the pressure that the step
 * asks, and the next one is taken when it cannot. Gas at 70 °F, as cylinder contents are stated.
 */
export function runNitrogen(plan: Plan, draws: readonly PlannedDraw[]): NitrogenRun {
  const stated = plan.bring !== null;
  const stock: Cylinder[] = [];
  for (const item of brought(plan, 'nitrogen')) {
    for (let k = 0; k < item.number; k++) {
      const cylinder = fill(
        plan,
        item.declaration,
        `${item.label ?? item.declaration.name}${item.number > 1 ? ` no. ${k + 1}` : ''}`,
      );
      if (cylinder) stock.push(cylinder);
    }
  }
  const size = (declaration: Declaration): number =>
    fact(declaration, 'water-volume', 'volume', plan)?.quantity?.low ?? 0;
  const spare = stated ? null : usual(plan, 'nitrogen-cylinder', size);
  const used: Cylinder[] = [];
  const changes: NitrogenRun['changes'][number][] = [];
  const after = new Map<Entry, number>();
  let short: NitrogenRun['short'] = null;
  let current = take();

  function take(): Cylinder | null {
    const next = stock.shift() ?? (spare ? fill(plan, spare, `${spare.name} no. ${used.length + 1}`) : null);
    if (next) used.push(next);
    return next;
  }

  for (const draw of draws) {
    let left = draw.mass;
    while (left > 1e-9) {
      if (!current) {
        short ??= { entry: draw.entry, mass: left };
        break;
      }
      const kept =
        draw.least === null
          ? 0
          : (contentOf(
              nitrogen,
              current.waterVolume,
              Math.max(draw.least, plan.site.atmosphere),
              standardTemperature,
            ) ?? 0);
      const gives = Math.min(left, Math.max(0, current.mass - kept));
      current.mass -= gives;
      left -= gives;
      if (left <= 1e-9) break;
      const from = current.name;
      // A size that is too small for a single draw would never end it.
      if (spare && gives <= 0 && used.length > 200) {
        short ??= { entry: draw.entry, mass: left };
        break;
      }
      current = take();
      if (current) changes.push({ entry: draw.entry, from, to: current.name });
    }
    if (current) after.set(draw.entry, pressureIn(current));
  }
  return {
    cylinders: used.map((each) => ({ name: each.name, left: pressureIn(each) })),
    changes,
    short,
    after,
    stated,
  };
}

function fill(plan: Plan, declaration: Declaration, name: string): Cylinder | null {
  const waterVolume = fact(declaration, 'water-volume', 'volume', plan)?.quantity?.low;
  const pressure = fact(declaration, 'full', 'pressure', plan)?.quantity?.low;
  if (waterVolume === undefined || pressure === undefined) return null;
  const mass = contentOf(nitrogen, waterVolume, pressure, standardTemperature);
  return mass === null ? null : { name, waterVolume, mass };
}

const pressureIn = (cylinder: Cylinder): number =>
  nitrogen.pressure(cylinder.mass / cylinder.waterVolume, standardTemperature) ?? 0;

/** Mass of a draw of nitrogen, kg. */
export const massOf = (draw: Extract<Draw, { of: 'nitrogen' }>): number => nitrogenMass(draw.volume.high);
