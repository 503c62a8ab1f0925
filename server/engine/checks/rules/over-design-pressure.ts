import { defineCheck } from '../define';
import {
  changesRefrigerant,
  designSource,
  keptEquipment,
  saturationDesign,
  sideOf,
  statedDesign,
  systemSpot,
  unfit,
} from '../plant-facts';
import { gauge } from '../support';

/** A refrigerant whose pressure at design temperature is above what the kept equipment may see. */
export const overDesignPressure = defineCheck({
  name: 'over-design-pressure',
  severity: 'error',
  title: 'The new refrigerant is above the design pressure of what stays',
  acceptable: false,
  noFix: 'Another refrigerant or other equipment is a decision of the design, and nothing in the plan says which.',
  reads: 'figure',
  ground: 'published',
  meaning:
    'At the design temperature of its side the new refrigerant stands higher than the rating of a kept part, or than the design pressure that the plan states.',
  why: 'On a hot day the machine trips at best, or a coil or a vessel bursts.',
  source: 'design temperatures of ASHRAE 15 section 9.2.1 (from memory); saturation from the property tables',
  wrong: {
    base: 'rack',
    instead: [
      ['R-22 -> R-448A', 'R-22 -> R-448A # <- here'],
      ['low 250 psig, high 400 psig', 'low 250 psig, high 280 psig'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan } = whole;
    if (unfit(plan) !== null || !changesRefrigerant(plan)) return;
    const over = keptEquipment(plan).flatMap((part) => {
      const side = sideOf(plan, part);
      const needed = saturationDesign(plan, side);
      const limit = part.properties.rated ?? statedDesign(plan, side) ?? plan.system.rated?.quantity.low ?? null;
      return needed !== null && limit !== null && needed > limit * 1.005 ? [{ part, side, needed, limit }] : [];
    });
    const worst = over.sort((a, b) => b.needed - b.limit - (a.needed - a.limit))[0];
    if (!worst) return;
    const [bound, span] = systemSpot(plan, 'refrigerant', 'after', 'before');
    whole.reportAt(bound, span, {
      message: (say) =>
        `${plan.system.refrigerant.after} reaches ${gauge(plan, worst.needed)} on the ${worst.side} side at design temperature (${designSource}), and ${say.part(worst.part.index)} is good for ${gauge(plan, worst.limit)}: it cannot stay with this refrigerant.`,
      related: over.map(({ part, limit }) => ({ part: part.index, message: `good for ${gauge(plan, limit)}` })),
    });
  },
});
