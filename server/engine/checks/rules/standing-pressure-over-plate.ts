import { defineCheck } from '../define';
import { citeMaker, overPlate } from '../over-plate';
import { designSource, systemSpot } from '../plant-facts';
import { authority, gauge } from '../support';

/** A refrigerant that on a hot day brings a machine at rest a little above the plate of its low side. */
export const standingPressureOverPlate = defineCheck({
  name: 'standing-pressure-over-plate',
  severity: 'warning',
  title: 'At rest on a hot day the low side stands a little above its plate',
  acceptable: true,
  noFix: 'A relief valve, a lower store of charge or the word of the maker must be looked at on the machine.',
  reads: 'figure',
  ground: 'memory',
  yieldsTo: ['over-design-pressure'],
  meaning:
    'At the design temperature of the low side the new refrigerant stands up to a tenth above the rating of a kept part, or than what the old refrigerant reached there, where the plate lies below that. It stands so only when the machine is at rest and as warm as that.',
  why: 'While it runs the low side is far below its plate; at rest on a hot day a relief valve may blow, or a weak joint open.',
  source:
    'design temperatures of ASHRAE 15 section 9.2.1 and, to the same purpose, EN 378-2 6.2.2 (both from memory); saturation from the property tables; a tenth is the accumulation of a relief valve (from memory)',
  wrong: {
    base: 'rack',
    instead: [
      ['R-22 -> R-448A', 'R-22 -> R-448A # <- here'],
      ['low 250 psig, high 400 psig', 'low 175 psig, high 400 psig'],
      ['    rated 250 psig', '    rated 175 psig'],
      ['    rated 250 psig', '    rated 175 psig'],
      ['low-side, high-side to 200 psig', 'low-side, high-side to 175 psig'],
    ],
  },
  right: {
    base: 'rack',
    instead: [
      ['R-22 -> R-448A', 'R-22 -> R-448A per "maker\'s retrofit sheet, page 2"'],
      ['low 250 psig, high 400 psig', 'low 175 psig, high 400 psig'],
      ['    rated 250 psig', '    rated 175 psig'],
      ['    rated 250 psig', '    rated 175 psig'],
      ['low-side, high-side to 200 psig', 'low-side, high-side to 175 psig'],
    ],
  },
  plan(whole) {
    const { plan } = whole;
    const over = overPlate(plan).filter(({ slight }) => slight);
    const [worst] = over;
    if (!worst) return;
    const [bound, span] = systemSpot(plan, 'refrigerant', 'after', 'before');
    whole.reportAt(bound, span, {
      message: (say) =>
        `At rest ${plan.system.refrigerant.after} reaches ${gauge(plan, worst.needed)} on the low side (${designSource}), and ${say.part(worst.part.index)} is good for ${gauge(plan, worst.limit)}: see that its relief valve is set for that and that it never stands so warm${citeMaker(plan, worst)}; ${authority}.`,
      related: over.map(({ part, limit }) => ({ part: part.index, message: `good for ${gauge(plan, limit)}` })),
    });
  },
});
