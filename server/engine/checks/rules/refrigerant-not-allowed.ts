import { lawOf, lawTaken } from '../../plan/law';
import type { Plan } from '../../plan/plan';
import { inForce, type LawDate, lawDateNamed } from '../../reference/law-dates';
import type { RefrigerantFacts } from '../../reference/refrigerant-facts';
import { defineCheck, type Whole } from '../define';
import { isComfort, isNewMachine } from '../equipment';
import { changesRefrigerant, newFacts, systemSpot } from '../plant-facts';
import { authority } from '../support';

/** What the law of the plan's day says to the new refrigerant. Restrictions that hang on when the equipment was made are the other check's. */
export const refrigerantNotAllowed = defineCheck({
  name: 'refrigerant-not-allowed',
  severity: 'error',
  title: 'The refrigerant is no longer allowed for this on the day of the work',
  acceptable: false,
  noFix: 'Another refrigerant changes the equipment, the oil and every pressure of the plan.',
  reads: 'figure',
  ground: 'law',
  meaning: 'On the date of the plan a rule forbids this refrigerant in new equipment, or forbids going over to it.',
  why: 'The installation is against the law, and the owner is left with a machine that nobody may fill.',
  source: 'table of dates: 40 CFR 82.16(c), 82.306, 84.54, 88 FR 88825, 91 FR 31284; (EU) 2024/590',
  wrong: {
    base: 'split',
    plan: 'date 2026-03-02',
    instead: [
      ['refrigerant R-22 -> R-454B', 'refrigerant R-22 -> R-410A # <- here'],
      ['holds R-454B', 'holds R-410A'],
    ],
  },
  right: { base: 'split', plan: 'date 2026-03-02' },
  plan(whole) {
    const { plan } = whole;
    const facts = newFacts(plan);
    if (!facts || plan.day === null) return;
    const law = forbids(plan, facts);
    if (law) say(whole, law, facts, 'choose another refrigerant');
  },
});

function forbids(plan: Plan, facts: RefrigerantFacts): LawDate | undefined {
  const day = plan.day ?? '';
  const law = lawOf(plan);
  if (law === 'EU')
    return facts.ozoneDepleting && inForce('eu-hcfc-end', day) ? lawDateNamed('eu-hcfc-end') : undefined;
  if (law !== 'US') return undefined;
  if (
    facts.ozoneDepleting &&
    (changesRefrigerant(plan) || isNewMachine(plan)) &&
    inForce('hcfc-new-equipment-end', day)
  )
    return lawDateNamed('hcfc-new-equipment-end');
  const limit = lawDateNamed('technology-transition-ac-installation');
  return overWarming(plan, facts) &&
    inForce('technology-transition-ac-installation', day) &&
    !inForce('technology-transition-amendment', day)
    ? limit
    : undefined;
}

/** New comfort cooling whose refrigerant reaches the limit of warming potential: the rule forbids 700 and more. */
export function overWarming(plan: Plan, facts: RefrigerantFacts): boolean {
  const limit = lawDateNamed('technology-transition-ac')?.limit ?? Number.POSITIVE_INFINITY;
  return lawOf(plan) === 'US' && isNewMachine(plan) && isComfort(plan) && facts.warming.fourth >= limit;
}

export function say(whole: Whole, law: LawDate, facts: RefrigerantFacts, way: string): void {
  const [bound, span] = systemSpot(whole.plan, 'refrigerant', 'after', 'before');
  const warming =
    law.limit === null ? '' : ` (warming potential ${Math.round(facts.warming.fourth)}, limit ${law.limit})`;
  whole.reportAt(bound, span, {
    message: `${facts.name}${warming}: since ${law.from}, ${law.subject} (${law.citation}${law.verified ? '' : ', not verified'}${lawTaken(whole.plan)}): ${way}; ${authority}.`,
  });
}
