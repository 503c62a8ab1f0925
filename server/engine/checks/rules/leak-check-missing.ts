import { lawOf, lawTaken } from '../../plan/law';
import type { Plan } from '../../plan/plan';
import { type ApplianceUse, leakRule } from '../../reference/leak-triggers';
import type { Entry } from '../../walk/walk';
import { has, isCharge, leaves } from '../course';
import { defineCheck, type Whole } from '../define';
import { isComfort, statedEquipment } from '../equipment';
import { chargeInAll, newFacts } from '../plant-facts';
import { amount, authority, edits } from '../support';
import { insertBefore } from '../ways-out';

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
    'The job is a repair, no burnout: a machine that stays is opened and filled again; its charge is of the size for which the law of the site wants a repair verified, and no step looks for leaks once the refrigerant is in. Or refrigerant is added to a machine that nobody has opened and that has lost some, and no step before has looked for the leak.',
  why: 'A test with nitrogen on a machine that stands cold does not show the leak at the valve that opens when it runs hot; the owner must show the verification.',
  source:
    '40 CFR 82.157(e) from 50 lb of an ozone-depleting gas, 40 CFR 84.106(e) from 15 lb of others and of blends that hold an HFC; (EU) 2024/573: within a month of a repair, from 5 t of CO2; topping up: the same rules count the leak rate from it, (EU) 2024/573 article 4 from memory, for smaller machines common practice',
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
    toppedUp(whole);
    // A conversion or a burnout that never leaked has nothing to verify.
    if (!plan.kinds.includes('repair') || plan.kinds.includes('burnout')) return;
    const at = entries.findIndex(isCharge);
    const charge = entries[at];
    const asked = charge && entries.some((entry) => has(entry, 'opens')) ? askedBy(plan) : null;
    if (!charge || asked === null) return;
    if (entries.slice(at).some(looksForLeaks)) return;
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

const looksForLeaks = (entry: Entry): boolean => leaves(entry, /^leak-check/);

/** Refrigerant added to what a closed machine still holds of its own: where did the rest go? */
function toppedUp(whole: Whole): void {
  const { plan, entries } = whole;
  const [charge, left] = [plan.system.charge, plan.system.recoverCharge].map((each) => each?.quantity.low ?? 0);
  const isShort = left! > 0 && left! < charge! * 0.98;
  const adds = (entry: Entry): boolean =>
    entry.events.some(
      (event) =>
        event.type === 'charges' &&
        (event.purpose === 'charge' || isShort) &&
        event.held.some(({ gas, since }) => gas === 'refrigerant' && since === null),
    );
  for (const entry of entries) {
    if (looksForLeaks(entry) || has(entry, 'opens') || has(entry, 'pressurises')) return;
    if (!adds(entry)) continue;
    whole.report(entry, {
      message: `Refrigerant is added here to a machine that has lost some${isShort ? ` (it holds ${amount(plan, 'mass', left!)} of ${amount(plan, 'mass', charge!)})` : ''}, and no step before has looked for the leak: find and mend it first (${topUpRule(plan)}); ${authority}.`,
      slot: 'what',
      root: 'topped up',
      fixes: [insertBefore('Leak-check before this step', entry.slot.step, 'leak-check system')],
    });
    return;
  }
}

function topUpRule(plan: Plan): string {
  if (lawOf(plan) === 'EU') return '(EU) 2024/573 article 4: a leak is repaired without delay';
  const asked = askedBy(plan);
  return asked === null ? 'common practice' : `${asked}: the leak rate counts from here${lawTaken(plan)}`;
}

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
