import type { Part } from '../circuit/graph';
import { isLine } from '../circuit/kinds';
import type { Bound } from '../plan/bind';
import { child } from '../plan/bind';
import { wordSpan } from '../plan/gather';
import type { Head, Plan } from '../plan/plan';
import type { Span } from '../plan/read-terms';
import { bubblePressure, liquidDensity, refrigerantNamed } from '../properties';
import { designTemperatures, leastDesignPressure } from '../reference/pressure-test';
import { factsOf, flammability, type OilFamily, type RefrigerantFacts } from '../reference/refrigerant-facts';
import { fahrenheit, standardAtmosphere } from '../reference/table-units';

/** Questions about a plan's machine that several checks ask. SI throughout. */

export type Side = 'low' | 'high';

const reverses = new WeakMap<Head, boolean>();
export function isHeatPump(plan: Plan): boolean {
  let found = reverses.get(plan.head);
  if (found === undefined)
    reverses.set(plan.head, (found = plan.graph.parts.some((part) => part.kind.kind === 'reversing-valve')));
  return found;
}

/** The side that rates a part: whatever is high side in cooling, or in heating. */
export const sideOf = (plan: Plan, part: Part): Side =>
  (part.highSide && !behindFlashTank(plan, part)) ||
  part.kind.kind === 'vapour-line' ||
  (isHeatPump(plan) && part.kind.equipment && part.kind.group === 'coil')
    ? 'high'
    : 'low';

/**
 * Between the flash tank of a booster and the cases the pressure is that of the tank: a valve lets it down before the tank,
 * and the tank's relief bounds it. In a heat pump a receiver between two valves is high side one way round.
 */
function behindFlashTank(plan: Plan, part: Part): boolean {
  if (isHeatPump(plan)) return false;
  const ring = plan.graph.parts.filter((each) => each.circuit === part.circuit);
  const tank = ring.findIndex((each, at) => each.kind.kind === 'receiver' && ring[at - 1]?.kind.group === 'metering');
  const at = ring.indexOf(part);
  return tank >= 0 && at >= tank && !ring.slice(tank, at + 1).some((each) => hot.has(each.kind.kind));
}
const hot = new Set(['compressor', 'condenser', 'discharge-line', 'hot-gas-line']);

const cooledByWater = new Set(['coaxial-coil', 'plate-exchanger']);

/** Saturation pressure that the code asks a side to bear with the new refrigerant, Pa absolute; null where the tables say nothing. */
export function saturationDesign(plan: Plan, side: Side, name = plan.system.refrigerant.after): number | null {
  const refrigerant = name === null ? undefined : refrigerantNamed(name);
  if (!refrigerant) return null;
  const water = plan.graph.parts.some((part) => part.highSide && cooledByWater.has(part.kind.kind));
  const air = plan.graph.parts.some((part) => part.kind.kind === 'condenser' || part.kind.kind === 'microchannel-coil');
  const high = water && !air ? designTemperatures.highWater : designTemperatures.highAir;
  const pressure = bubblePressure(refrigerant, side === 'high' ? high : designTemperatures.low);
  return pressure === null ? null : Math.max(pressure, leastDesignPressure - standardAtmosphere + plan.site.atmosphere);
}

/** The temperature that stands behind `saturationDesign`, in words. */
export const designSource = designTemperatures.source;

/** What the plan states for a side, Pa absolute. */
export const statedDesign = (plan: Plan, side: Side): number | null =>
  (side === 'high' ? plan.system.designHigh : plan.system.designLow)?.quantity.low ?? null;

/** Equipment that stays: made for the old refrigerant. Metering devices, driers and lines are judged on their own. */
export const keptEquipment = (plan: Plan): readonly Part[] =>
  plan.graph.parts.filter(
    (part) =>
      (part.standing === 'kept' || part.standing === 'reused') &&
      part.kind.equipment &&
      (part.kind.group === 'unit' || part.kind.group === 'coil') &&
      !plan.graph.circuits[part.circuit]?.untouched,
  );

export const lines = (plan: Plan): readonly Part[] =>
  plan.graph.parts.filter((part) => isLine(part.kind) && !plan.graph.circuits[part.circuit]?.untouched);

export const newFacts = (plan: Plan): RefrigerantFacts | undefined =>
  plan.system.refrigerant.after === null ? undefined : factsOf(plan.system.refrigerant.after);
export const oldFacts = (plan: Plan): RefrigerantFacts | undefined =>
  plan.system.refrigerant.before === null ? undefined : factsOf(plan.system.refrigerant.before);
export const burns = (facts: RefrigerantFacts | undefined): number =>
  facts?.safetyClass ? flammability(facts.safetyClass) : 0;

export const changesRefrigerant = (plan: Plan): boolean =>
  plan.system.refrigerant.after !== null && plan.system.refrigerant.before !== plan.system.refrigerant.after;

/** Why the new refrigerant has no place in the equipment that stays; what else would follow from it is then not said. */
export function unfit(plan: Plan): 'burns' | 'new equipment only' | null {
  const facts = newFacts(plan);
  if (!facts || !changesRefrigerant(plan) || keptEquipment(plan).length === 0) return null;
  if (burns(facts) > burns(oldFacts(plan))) return 'burns';
  return facts.newEquipmentOnly ? 'new equipment only' : null;
}

/** The family of an oil by name: itself, or what the shop declares. */
export function oilFamily(plan: Plan, name: string | null): OilFamily | null {
  if (name === null) return null;
  const declared = plan.scope.find('oil', name);
  const family = declared ? child(declared.bound.block, 'family')?.values['family'] : name;
  return (family as OilFamily | undefined) ?? null;
}

/** Where a value of the `system` block stands; the plan's own word where there is none. */
export function systemSpot(plan: Plan, word: string, ...slots: readonly string[]): readonly [Bound, Span] {
  const bound = child(plan.system.bound?.block ?? [], word);
  if (!bound) return [plan.declaration.bound, wordSpan(plan.declaration.bound)];
  for (const slot of slots) {
    const span = bound.spans[slot];
    if (span) return [bound, span];
  }
  return [bound, wordSpan(bound)];
}

/** Liquid at the usual 95 °F of a liquid line gives the line allowance where the maker's is not stated. */
const liquidLine = fahrenheit(95);

/** The charge that the machine will hold, kg: the maker's, and what lines beyond it hold. Null where none is stated. */
export function chargeInAll(plan: Plan): number | null {
  const { charge, chargeCovers, lineAllowance, refrigerant } = plan.system;
  if (!charge) return null;
  const tables = refrigerant.after === null ? undefined : refrigerantNamed(refrigerant.after);
  const density = tables ? (liquidDensity(tables, liquidLine) ?? 0) : 0;
  const covers = chargeCovers?.quantity.low;
  if (covers === undefined) return charge.quantity.high;
  const liquid = lines(plan).filter((part) => part.kind.kind === 'liquid-line');
  const length = liquid.reduce((sum, part) => sum + (part.properties.length ?? 0), 0);
  const bore = Math.max(0, ...liquid.map((part) => part.properties.tube?.bore ?? 0));
  const rate = lineAllowance?.quantity.high ?? (Math.PI / 4) * bore ** 2 * density;
  return charge.quantity.high + Math.max(0, length - covers) * rate;
}
