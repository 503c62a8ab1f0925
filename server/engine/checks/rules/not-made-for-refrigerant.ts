import { defineCheck } from '../define';
import { keptEquipment, newFacts, systemSpot, unfit } from '../plant-facts';
import { authority } from '../support';

/** A flammable refrigerant, or one for new equipment only, in equipment that stays. */
export const notMadeForRefrigerant = defineCheck({
  name: 'not-made-for-refrigerant',
  severity: 'error',
  title: 'Kept equipment is not made for the new refrigerant',
  acceptable: false,
  noFix: 'Another refrigerant or other equipment is a decision of the design, and nothing in the plan says which.',
  reads: 'figure',
  yieldsTo: ['other-refrigerant'],
  ground: 'law',
  meaning:
    'The plan puts a refrigerant that burns, or that is listed for new equipment only, into a compressor or a coil that was made for another one.',
  why: 'Its relays, motor and housing can light a leak, nothing in it is listed for that gas, and the rule on substitutes forbids it.',
  source: 'substitute rules of 40 CFR 82 subpart G and equipment listing (handbook 3.2); classes of ASHRAE 34',
  wrong: {
    base: 'rack',
    instead: [
      ['refrigerant R-22 -> R-448A', 'refrigerant R-22 -> R-454C # <- here'],
      ['charge system with R-448A', 'charge system with R-454C'],
      ['epr-1 for R-448A', 'epr-1 for R-454C'],
      ['adjust charge with R-448A', 'adjust charge with R-454C'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan } = whole;
    const why = unfit(plan);
    const facts = newFacts(plan);
    if (why === null || !facts) return;
    const kept = keptEquipment(plan);
    const [bound, span] = systemSpot(plan, 'refrigerant', 'after', 'before');
    whole.reportAt(bound, span, {
      message: (say) =>
        `${facts.name} (${facts.safetyClass ?? 'class not known'}) ${why === 'burns' ? 'burns' : 'is for new equipment only'}, and ${say.parts(kept.map((part) => part.index))} ${kept.length > 1 ? 'were' : 'was'} made for ${plan.system.refrigerant.before ?? 'another refrigerant'}: choose one of class A1 that is listed for a retrofit, or new equipment; ${authority}.`,
      concerns: kept.map((part) => part.index),
      related: kept.map((part) => ({ part: part.index, message: 'stays' })),
    });
  },
});
