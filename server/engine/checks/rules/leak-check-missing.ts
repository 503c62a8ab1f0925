import { lawOf, lawTaken } from '../../plan/law';
import type { Plan } from '../../plan/plan';
import { type ApplianceUse, leakRule } from '../../reference/leak-triggers';
import { has, isCharge } from '../course';
import { defineCheck } from '../define';
import { isComfort, statedEquipment } from '../equipment';
import { chargeInAll, newFacts } from '../plant-facts';
import { amount, authority, edits } from '../support';

/** Tonnes of CO2 from which the law of the EU asks for a check within a month of a repair, kg. */
const europeanFrom = 5000;

/** A repaired machine filled again, of a size that the law wants checked, and nobody looks for leaks with the charge in. */
export const leakCheckMissing = defineCheck({
  name: 'leak-check-missing',
  severity: 'warning',
  title: 'No leak check after the charge where the law asks for one',
  acceptable: true,
  reads: 'figure',
  ground: 'law',
  meaning:
    'The job is a repair, no burnout: a machine that stays is opened and filled again; its charge is of the size for which the law of the site wants a repair verified, and no step looks for leaks once the refrigerant is in.',
  why: 'A test with nitrogen on a machine that stands cold does not show the leak at the valve that opens when it runs hot; the owner must show the verification.',
  source:
    '40 CFR 82.157(e) from 50 lb of an ozone-depleting gas, 40 CFR 84.106(e) from 15 lb of others and of blends that hold an HFC; (EU) 2024/573: within a month of a repair, from 5 t of CO2 (handbook 2.2)',
  wrong: {
    base: 'rack',
    plan: 'kind repair',
    instead: [
      ['refrigerant R-22 -> R-448A', 'refrigerant R-448A'],
      ['oil mineral -> POE', 'oil POE'],
      [
        `    repeat until mineral at most 5 %, at least 3, at most 4 {
      change-oil comp to POE 140 fl-oz, leaving 30 %
      run comp for 24 h
      sample oil
    }
`,
        '',
      ],
      ['recover-charge 60 lb\n    charge 55 lb', 'recover-charge 50 lb\n    charge 50 lb'],
      ['charge system with', 'charge system with'],
      ['R-448A 50 lb as liquid', 'R-448A 50 lb as liquid # <- here'],
    ],
  },
  right: {
    base: 'rack',
    instead: [['    label system', '    leak-check system\n    label system']],
  },
  plan(whole) {
    const { plan, entries } = whole;
    // A conversion or a burnout that never leaked has nothing to verify.
    if (!plan.kinds.includes('repair') || plan.kinds.includes('burnout')) return;
    const at = entries.findIndex(isCharge);
    const charge = entries[at];
    const asked = charge && entries.some((entry) => has(entry, 'opens')) ? askedBy(plan) : null;
    if (!charge || asked === null) return;
    const looked = entries
      .slice(at)
      .some((entry) =>
        [...entry.after.marks].some(([name, cause]) => cause === entry.cause && name.startsWith('leak-check')),
      );
    if (looked) return;
    const last = entries.at(-1)!;
    whole.report(charge, {
      message: `The machine takes ${amount(plan, 'mass', chargeInAll(plan) ?? 0)}, and no step looks for leaks once this charge is in: the repair is to be verified (${asked}${lawTaken(plan)}); ${authority}.`,
      slot: 'what',
      fixes: [
        {
          title: 'Leak-check at the end',
          edits: (mend) => edits(mend.insertAfter(last.slot.step, 'leak-check system')),
        },
      ],
    });
  },
});

/** The rule that asks for it; null where none does. */
function askedBy(plan: Plan): string | null {
  const facts = newFacts(plan);
  const mass = chargeInAll(plan);
  if (!facts || mass === null || plan.day === null) return null;
  if (lawOf(plan) === 'EU')
    return mass * facts.warming.fourth >= europeanFrom ? '(EU) 2024/573: within a month, from 5 t of CO2' : null;
  if (lawOf(plan) !== 'US') return null;
  const rule = leakRule(
    useOf(plan),
    mass,
    { ozoneDepleting: facts.ozoneDepleting, warming: facts.warming.fourth, composition: facts.composition },
    plan.day,
  );
  return rule?.citation ?? null;
}

const useOf = (plan: Plan): ApplianceUse => {
  if (statedEquipment(plan) === 'industrial') return 'industrial';
  if (statedEquipment(plan) === 'chiller') return 'comfort-cooling';
  return isComfort(plan) ? 'residential-and-light-commercial' : 'commercial';
};
