import { defineCheck } from '../define';
import { citeMaker, overPlate } from '../over-plate';
import { designSource, systemSpot } from '../plant-facts';
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
    'At the design temperature of its side the new refrigerant stands higher than the rating of a kept part, or than the design pressure that the plan states. A maker who allows the refrigerant for the machine, cited at `refrigerant` with `per`, stands in place of that temperature up to a quarter over the plate; what is slightly over on the low side is told by `standing-pressure-over-plate`.',
  why: 'On a hot day the machine trips at best, or a coil or a vessel bursts.',
  source:
    'design temperatures of ASHRAE 15 section 9.2.1 (from memory); saturation from the property tables; a cited sheet up to 1.25 of the plate, at which it was tested (federal guide specification 15652A)',
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
    const over = overPlate(plan).filter(({ slight }) => !slight);
    const [worst] = over;
    if (!worst) return;
    const [bound, span] = systemSpot(plan, 'refrigerant', 'after', 'before');
    whole.reportAt(bound, span, {
      message: (say) =>
        `${plan.system.refrigerant.after} reaches ${gauge(plan, worst.needed)} on the ${worst.side} side at design temperature (${designSource}), and ${say.part(worst.part.index)} is good for ${gauge(plan, worst.limit)}: it cannot stay with this refrigerant${citeMaker(plan, worst)}.`,
      related: over.map(({ part, limit }) => ({ part: part.index, message: `good for ${gauge(plan, limit)}` })),
    });
  },
});
