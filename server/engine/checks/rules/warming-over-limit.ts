import { lawOf, lawTaken } from '../../plan/law';
import type { Plan } from '../../plan/plan';
import { type LawDate, lawDates } from '../../reference/law-dates';
import type { RefrigerantFacts } from '../../reference/refrigerant-facts';
import { isCharge } from '../course';
import { defineCheck, type Whole } from '../define';
import { isComfort, isNewMachine, statedEquipment } from '../equipment';
import { chargeInAll, newFacts, systemSpot } from '../plant-facts';
import { authority } from '../support';

/** A warming potential above what the law of the site lets into this kind of equipment on the plan's day. */
export const warmingOverLimit = defineCheck({
  name: 'warming-over-limit',
  severity: 'warning',
  title: 'The warming potential is over the limit for this kind of equipment',
  acceptable: true,
  noFix: 'Another refrigerant changes the equipment, the oil and every pressure of the plan.',
  reads: 'figure',
  ground: 'law',
  yieldsTo: ['refrigerant-not-allowed', 'refrigerant-from-stock-only'],
  meaning:
    'The machine is new, the plan states what kind of equipment it is, and on the day of the plan a rule limits the warming potential below this one, or names the refrigerant; or, under the law of the EU, a machine is serviced with a gas that may only be used reclaimed.',
  why: 'The limits differ by kind of equipment, by date and by size, and they change: a machine that breaks one may not be sold, put in or filled.',
  source: 'table of dates: 40 CFR 84.54 and its amendments, (EU) 2024/573 (each row says whether its text was read)',
  wrong: {
    base: 'split',
    instead: [
      ['  oil mineral -> POE', '  oil mineral -> POE\n    equipment cold-storage'],
      ['refrigerant R-22 -> R-454B', 'refrigerant R-22 -> R-448A # <- here'],
      ['holds R-454B', 'holds R-448A'],
      ['high 450 psig', 'high 400 psig'],
      ['test-pressure 450 psig', 'test-pressure 400 psig'],
      ['to 450 psig for', 'to 400 psig for'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const facts = newFacts(plan);
    const day = plan.day;
    if (!facts || day === null || facts.ozoneDepleting) return;
    const law = lawOf(plan);
    const over = lawDates.filter((row) => row.law === law && day >= row.from && forbids(row, facts));
    const limit = isNewMachine(plan) ? over.find((row) => holdsFor(plan, row)) : undefined;
    if (limit) {
      report(whole, limit, facts, 'choose another refrigerant, or read the rule and accept this with what it says');
      return;
    }
    const service = over.find((row) => row.name === (isComfort(plan) ? 'eu-service-ac' : 'eu-service-refrigeration'));
    if (service && whole.entries.some(isCharge))
      report(whole, service, facts, 'bring reclaimed gas and accept this with its paper, or convert the machine');
  },
});

/** What the rule names, or what reaches its limit: the rules forbid that warming potential and more. */
const forbids = (row: LawDate, facts: RefrigerantFacts): boolean =>
  row.refrigerants?.includes(facts.name) ?? (row.limit !== null && facts.warming.fourth >= row.limit);

const holdsFor = (plan: Plan, row: LawDate): boolean => {
  const kind = statedEquipment(plan) ?? (isComfort(plan) ? 'air-conditioning' : null);
  const small = row.chargeBelow === undefined || (chargeInAll(plan) ?? 0) < row.chargeBelow;
  return kind !== null && small && (row.equipment?.includes(kind) ?? false);
};

function report(whole: Whole, row: LawDate, facts: RefrigerantFacts, way: string): void {
  const [bound, span] = systemSpot(whole.plan, 'refrigerant', 'after', 'before');
  whole.reportAt(bound, span, {
    message: `${facts.name} has a warming potential of ${Math.round(facts.warming.fourth)}; since ${row.from}, ${row.subject} (${row.citation}${row.verified ? '' : ', not verified'}${lawTaken(whole.plan)}): ${way}; ${authority}.`,
  });
}
