import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import type { Name } from '../plan/term';
import { exactly } from '../quantity';
import type { Entry } from '../walk/walk';
import type { Counted } from './draws';
import { cylinderServicePressure, safeFill } from './figures';
import { named } from './given';
import { optionsOf } from './options';
import { brought, fact, factOf, houseFill, pieces } from './stock-data';

/** A recovery cylinder on the job. Weights in kg, net; null where the collar's water capacity is not stated. */
export interface RecoveryCylinder {
  readonly name: string;
  readonly label: string | null;
  readonly refrigerant: string | null;
  readonly tare: number | null;
  /** Held at the start, and at the end. */
  readonly start: number;
  readonly end: number;
  /** The most that may be in it, by collar, house rule and temperature. */
  readonly most: number | null;
  /** Steps that put something into it of which the plan does not say how much. */
  readonly unknown: readonly Entry[];
}

export interface RecoveryRun {
  /** In the order of use. */
  readonly cylinders: readonly RecoveryCylinder[];
  readonly changes: readonly { readonly entry: Entry; readonly from: string; readonly to: string }[];
  /** Cylinders that were passed over, with the reason as a sentence. */
  readonly passedOver: readonly { readonly entry: Entry; readonly name: string; readonly why: string }[];
  /** For each refrigerant, the first step whose gas finds no room, and how much in all. */
  readonly short: readonly { readonly entry: Entry; readonly refrigerant: string; readonly mass: number }[];
  readonly stated: boolean;
}

type Cylinder = { -readonly [K in keyof RecoveryCylinder]: RecoveryCylinder[K] } & {
  readonly declaration: Declaration;
  unknown: Entry[];
};

/** More cylinders than this for one job mean that the size stated for them is wrong. */
const mostCylinders = 200;

/**
 * Fills recovery cylinders in the order of the work. A step that names a label fills that one alone; other steps fill what
 * no step names. A cylinder takes up to its safe fill, never two refrigerants, and none that its rating is too low for.
 * Without a stated stock the smallest of the shop that takes the charge is taken, as often as it is needed.
 */
export function runRecovery(plan: Plan, draws: readonly Counted[]): RecoveryRun {
  const stated = plan.bring !== null;
  const steps = draws.flatMap(({ entry, draw }) => (draw.of === 'recovery' ? [{ entry, draw }] : []));
  const reserved = new Set(steps.flatMap(({ draw }) => (draw.into ? [draw.into] : [])));
  const stock: Cylinder[] = brought(plan, 'recovery').flatMap((item) =>
    pieces(item).map((name, k) => {
      const held = (item.bound.values['holding'] as Name | undefined)?.text ?? null;
      // What is held is stated for the line as a whole; it stands in the first cylinder of it.
      const start = k === 0 ? (factOf(item.bound, 'mass', plan)?.quantity?.high ?? 0) : 0;
      return cylinder(plan, item.declaration, name, item.label, held, start);
    }),
  );
  const used: Cylinder[] = [];
  const changes: RecoveryRun['changes'][number][] = [];
  const passedOver: RecoveryRun['passedOver'][number][] = [];
  const short = new Map<string, { entry: Entry; refrigerant: string; mass: number }>();

  for (const { entry, draw } of steps) {
    const { refrigerant, into } = draw;
    let left = draw.mass?.high ?? 0;
    let before: Cylinder | null = null;
    const spare = stated ? null : usualRecoveryCylinder(plan, refrigerant, left);
    while (left > 1e-9 || before === null) {
      const next = find(entry, refrigerant, into, draw.mass === null, spare);
      if (!next || next === before) {
        if (left > 1e-9) lack(entry, refrigerant, left);
        break;
      }
      if (before) changes.push({ entry, from: before.name, to: next.name });
      before = next;
      next.refrigerant = refrigerant;
      if (!used.includes(next)) used.push(next);
      if (draw.mass === null) {
        next.unknown.push(entry);
        break;
      }
      const room = next.most === null ? left : Math.max(0, next.most - next.end);
      const goes = Math.min(left, room);
      next.end += goes;
      left -= goes;
    }
  }

  function find(
    entry: Entry,
    refrigerant: string,
    into: string | null,
    unknown: boolean,
    spare: Declaration | null,
  ): Cylinder | null {
    for (const each of stock) {
      const meant =
        into === null
          ? each.label === null || !reserved.has(each.label)
          : each.label === into || each.declaration.name === into;
      if (!meant) continue;
      const why = unfit(plan, each, refrigerant);
      if (why) {
        if (!passedOver.some((one) => one.name === each.name && one.why === why))
          passedOver.push({ entry, name: each.name, why });
        continue;
      }
      if (unknown || each.most === null || each.most - each.end > 1e-9) return each;
    }
    if (!spare || used.length >= mostCylinders) return null;
    const fresh = cylinder(plan, spare, `${spare.name} no. ${used.length + 1}`, into, null, 0);
    if (unfit(plan, fresh, refrigerant)) return null;
    stock.push(fresh);
    return fresh;
  }

  function lack(entry: Entry, refrigerant: string, mass: number): void {
    const known = short.get(refrigerant);
    if (known) known.mass += mass;
    else short.set(refrigerant, { entry, refrigerant, mass });
  }

  return {
    cylinders: used.map(({ declaration: _, ...each }) => each),
    changes,
    passedOver,
    short: [...short.values()],
    stated,
  };
}

function cylinder(
  plan: Plan,
  declaration: Declaration,
  name: string,
  label: string | null,
  refrigerant: string | null,
  start: number,
): Cylinder {
  const tare = fact(declaration, 'tare', 'mass', plan)?.quantity?.high ?? null;
  return { declaration, name, label, refrigerant, tare, start, end: start, most: null, unknown: [] };
}

/** Why a cylinder must not take a refrigerant; null where it may. Sets the most that it may hold of it. */
function unfit(plan: Plan, each: Cylinder, refrigerant: string): string | null {
  if (each.refrigerant !== null && each.refrigerant !== refrigerant)
    return `${each.name} holds ${each.refrigerant}; ${refrigerant} is not mixed into it.`;
  const marked = fact(each.declaration, 'service-pressure', 'pressure', plan)?.quantity?.low;
  const asked = cylinderServicePressure.figure(each.name, { refrigerant: named(refrigerant) }, optionsOf(plan)).quantity
    ?.low;
  if (marked !== undefined && asked !== undefined && marked < asked * (1 - 1e-6))
    return `${each.name} is rated too low for ${refrigerant}.`;
  const fill = safeFill.figure(
    each.name,
    {
      refrigerant: named(refrigerant),
      waterCapacity: fact(each.declaration, 'water-capacity', 'mass', plan),
      fillShare: houseFill(plan),
    },
    optionsOf(plan),
  );
  each.most = fill.quantity?.low ?? null;
  // Without the collar's figure the fill is not known; with it, a missing fill means that the rule forbids this gas.
  return fill.quantity || fill.missing.length > 0 ? null : (fill.notes.at(-1) ?? null);
}

/** The cylinder that the shop would load for a charge: the smallest that takes it whole, else the one that takes most. */
export function usualRecoveryCylinder(plan: Plan, refrigerant: string, mass: number): Declaration | null {
  let best: { declaration: Declaration; most: number } | null = null;
  for (const declaration of plan.scope.of('recovery-cylinder')) {
    const tried = cylinder(plan, declaration, declaration.name, null, null, 0);
    if (unfit(plan, tried, refrigerant)) continue;
    const most = tried.most ?? 0;
    const better = best === null || (best.most >= mass ? most >= mass && most < best.most : most > best.most);
    if (better) best = { declaration, most };
  }
  return best?.declaration ?? null;
}

/** The weight that the scale shows under a cylinder, kg; null where the tare is not stated. */
export const grossWeight = (each: RecoveryCylinder, net: number): ReturnType<typeof exactly> | null =>
  each.tare === null ? null : exactly('mass', each.tare + net);
