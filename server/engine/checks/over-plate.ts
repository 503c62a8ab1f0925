import type { Part } from '../circuit/graph';
import { child } from '../plan/bind';
import type { Plan } from '../plan/plan';
import { overshootMost } from '../reference/pressure-test';
import {
  changesRefrigerant,
  keptEquipment,
  type Side,
  saturationDesign,
  sideOf,
  statedDesign,
  unfit,
} from './plant-facts';

/** Kept equipment whose plate the new refrigerant stands above at the design temperature of its side; pressures in Pa absolute. */
export interface OverPlate {
  readonly part: Part;
  readonly side: Side;
  readonly needed: number;
  readonly limit: number;
  /** Only as the machine stands still, and not far: a relief valve that is set at the plate holds it there. */
  readonly slight: boolean;
}

/**
 * A relief valve flows in full at a tenth over its setting (pressure vessel codes, from memory): what stands no higher than that
 * over the plate of the low side is a matter of the relief and the weather, more is the wrong refrigerant.
 */
const relieved = 1.1;
/** Below this share of what the old refrigerant reached a figure slipped, and is no plate: common practice, no source. */
const leastPlate = 0.75;

/**
 * All parts over their plate, the worst first. A maker who allows the refrigerant for the machine, cited at `refrigerant`,
 * stands in place of the general design temperatures (handbook, head: the maker's sheet overrides every generic number), as far
 * as the plate's own test goes.
 */
export function overPlate(plan: Plan): readonly OverPlate[] {
  if (unfit(plan) !== null || !changesRefrigerant(plan)) return [];
  const { atmosphere } = plan.site;
  const cited = child(plan.system.bound?.block ?? [], 'refrigerant')?.values['per'] !== undefined;
  const borne = cited ? overshootMost.quantity.high : 1;
  return keptEquipment(plan)
    .flatMap((part): OverPlate[] => {
      const side = sideOf(plan, part);
      const needed = saturationDesign(plan, side);
      const limit = part.properties.rated ?? statedDesign(plan, side) ?? plan.system.rated?.quantity.low ?? null;
      if (needed === null || limit === null || needed <= limit * 1.005) return [];
      if (needed - atmosphere <= (limit - atmosphere) * borne) return [];
      // An older plate of the low side may never have gone by this temperature: then the old refrigerant is the measure.
      const old = side === 'low' ? (saturationDesign(plan, side, plan.system.refrigerant.before) ?? 0) : 0;
      const stood = limit - atmosphere >= (old - atmosphere) * leastPlate ? old : 0;
      if (needed <= stood * 1.005) return [];
      const slight = side === 'low' && needed - atmosphere <= (Math.max(limit, stood) - atmosphere) * relieved;
      return [{ part, side, needed, limit, slight }];
    })
    .sort((a, b) => b.needed - b.limit - (a.needed - a.limit));
}

/** What both checks say to somebody who may have the maker's word for it; nothing where that does not help. */
export function citeMaker({ system, site }: Plan, { needed, limit }: OverPlate): string {
  const helps = needed - site.atmosphere <= (limit - site.atmosphere) * overshootMost.quantity.high;
  return helps
    ? `; where the maker allows ${system.refrigerant.after} for this machine, cite the sheet at the refrigerant: per "…"`
    : '';
}
