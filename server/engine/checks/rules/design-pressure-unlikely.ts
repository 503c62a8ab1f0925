import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import { bubblePressure, refrigerantNamed } from '../../properties';
import { designTemperatures } from '../../reference/pressure-test';
import { defineCheck, type Whole } from '../define';
import {
  changesRefrigerant,
  keptEquipment,
  type Side,
  saturationDesign,
  sideOf,
  statedDesign,
  systemSpot,
} from '../plant-facts';
import { amount, authority, gauge } from '../support';

/**
 * Plates stand between what the refrigerant reaches at the design temperature and a little over twice that (a water heater
 * goes highest); beyond these a figure slipped. Common practice, no source; of gauge pressure.
 */
const most = 3;
const least = 0.75;

/** A design pressure that no plate with this refrigerant shows. */
export const designPressureUnlikely = defineCheck({
  name: 'design-pressure-unlikely',
  severity: 'warning',
  title: 'A design pressure that no plate with this refrigerant shows',
  acceptable: true,
  noFix: 'The figure stands on a plate, and only whoever reads that again knows it.',
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The stated design pressure of a side is less than three quarters, or more than three times, of what the refrigerant reaches at the design temperature; or, where the refrigerant has no liquid that warm, below what it works at; or above the rating of the system; or the low side stands above the high side. Or a part is rated at less than three quarters of the design pressure of its side, or its relief valve opens below three quarters of what the refrigerant reaches.',
  why: 'Test pressure, relief setting and the weakest part all hang on it: one digit too many bursts a coil, one too few proves nothing.',
  source: `${designTemperatures.source} (from memory); the borders are common practice, no source`,
  wrong: {
    base: 'split',
    instead: [['low 250 psig, high 450 psig', 'low 250 psig, high 45 psig # <- here']],
  },
  right: { base: 'split' },
  plan(whole) {
    const { designLow, designHigh } = whole.plan.system;
    let slipped = false;
    for (const side of ['low', 'high'] as const) {
      const stated = (side === 'low' ? designLow : designHigh)?.quantity.low;
      const off = stated === undefined ? null : offOf(whole.plan, side, stated);
      if (off) report(whole, side, off);
      slipped ||= off !== null;
    }
    if (!slipped) {
      ratingsFarBelow(whole);
      reliefsFarBelow(whole);
    }
    // Where one of the two is no plate's figure, that it stands on the wrong side of the other follows from it.
    if (!slipped && designLow && designHigh && designLow.quantity.low > designHigh.quantity.low * 1.005)
      report(whole, 'low', `and the high side for ${gauge(whole.plan, designHigh.quantity.low)}, which is less`);
  },
});

/** What speaks against a stated design pressure; null where nothing does. */
function offOf(plan: Plan, side: Side, stated: number): string | null {
  const { rated } = plan.system;
  if (rated && stated > rated.quantity.low * 1.005)
    return `and the system is rated ${gauge(plan, rated.quantity.low)}, which is less`;
  const { atmosphere } = plan.site;
  const { before, after } = plan.system.refrigerant;
  const reached = [...new Set([before, after])].flatMap((name) => {
    const pressure = name === null ? null : saturationDesign(plan, side, name);
    return pressure === null ? [] : [{ name, pressure }];
  });
  if (reached.length === 0) return underWorking(plan, side, stated);
  const [high] = [...reached].sort((a, b) => b.pressure - a.pressure);
  const low = reached.find((each) => each.pressure === Math.min(...reached.map((one) => one.pressure)));
  if (!high || !low) return null;
  const own = stated - atmosphere;
  const over = own > (high.pressure - atmosphere) * most;
  if (!over && own >= (low.pressure - atmosphere) * least) return null;
  const each = over ? high : low;
  return `where ${each.name} reaches ${gauge(plan, each.pressure)} at the design temperature (${designTemperatures.source})`;
}

/** Where a refrigerant has no liquid at the design temperature, its low side stands above the pressure that it works at. */
function underWorking(plan: Plan, side: Side, stated: number): string | null {
  const tables = refrigerantNamed(plan.system.refrigerant.after ?? '');
  const at = plan.system.evaporating?.quantity.low ?? null;
  const pressure = tables && side === 'low' && at !== null ? bubblePressure(tables, at) : null;
  if (!tables || pressure === null || stated >= pressure) return null;
  return `where ${tables.name} stands at ${gauge(plan, pressure)} while it evaporates at ${amount(plan, 'temperature', at!)}`;
}

function report(whole: Whole, side: Side, against: string): void {
  const { plan } = whole;
  const [bound, span] = systemSpot(plan, 'design-pressure', side);
  const stated = (side === 'low' ? plan.system.designLow : plan.system.designHigh)!;
  whole.reportAt(bound, span, {
    message: `The ${side} side is stated as designed for ${gauge(plan, stated.quantity.low)}, ${against}: read the plate again; ${authority}.`,
    root: side,
  });
}

/** Parts whose own plate contradicts the side that they stand on: one digit too few, or the wrong part. */
function ratingsFarBelow(whole: Whole): void {
  const { plan } = whole;
  const { atmosphere } = plan.site;
  // What stays for another refrigerant has a check of its own, over-design-pressure.
  const judged = changesRefrigerant(plan) ? keptEquipment(plan) : [];
  for (const part of plan.graph.parts) {
    const { rated } = part.properties;
    // Lines are judged with their tube, by tube-not-rated.
    if (
      rated === undefined ||
      part.kind.group === 'line' ||
      judged.includes(part) ||
      plan.graph.circuits[part.circuit]?.untouched
    )
      continue;
    const side = sideOf(plan, part);
    const design = statedDesign(plan, side) ?? saturationDesign(plan, side);
    if (design === null || rated - atmosphere >= (design - atmosphere) * least) continue;
    const plate = child(plan.partStatements[part.index]?.block ?? [], 'rated');
    const said = {
      message: `${part.name} is rated ${gauge(plan, rated)}, and the ${side} side that it stands on sees up to ${gauge(plan, design)} (design pressure): read its plate again, or take another; ${authority}.`,
      concerns: [part.index],
    };
    if (plate) whole.reportAt(plate, plate.spans['pressure'] ?? wordSpan(plate), said);
    else whole.reportPart(part.index, said);
  }
}

/** Relief valves that would lift long before the machine is as warm as it is designed for. */
function reliefsFarBelow(whole: Whole): void {
  const { plan } = whole;
  const { atmosphere } = plan.site;
  for (const part of plan.graph.parts) {
    const { relief } = part.properties;
    if (relief === undefined || plan.graph.circuits[part.circuit]?.untouched) continue;
    const side = sideOf(plan, part);
    const reached = saturationDesign(plan, side);
    if (reached === null || relief - atmosphere >= (reached - atmosphere) * least) continue;
    const bound = child(plan.partStatements[part.index]?.block ?? [], 'relief');
    if (!bound) continue;
    whole.reportAt(bound, bound.spans['pressure'] ?? wordSpan(bound), {
      message: `The relief valve of ${part.name} opens at ${gauge(plan, relief)}, and the ${side} side reaches ${gauge(plan, reached)} at the design temperature (${designTemperatures.source}): read its tag again; ${authority}.`,
      concerns: [part.index],
    });
  }
}
