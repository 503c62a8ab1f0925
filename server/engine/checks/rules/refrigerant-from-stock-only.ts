import { inForce, lawDateNamed } from '../../reference/law-dates';
import { defineCheck } from '../define';
import { newFacts } from '../plant-facts';
import { overWarming, say } from './refrigerant-not-allowed';

/** Allowed only with equipment that was made before a day, which the plan cannot know. */
export const refrigerantFromStockOnly = defineCheck({
  name: 'refrigerant-from-stock-only',
  severity: 'warning',
  title: 'Only equipment of old stock may still be installed with this refrigerant',
  acceptable: true,
  noFix: 'Only the plate says when the equipment was made; accept this with what it says.',
  reads: 'figure',
  ground: 'law',
  yieldsTo: ['refrigerant-not-allowed'],
  meaning:
    'New equipment with this refrigerant is no longer made; what was made before the day of the rule may still be put in.',
  why: 'Whether this one may depends on its plate; an accepted finding says that somebody has looked.',
  source: 'table of dates: 40 CFR 84.54, 88 FR 88825, 91 FR 31284',
  wrong: {
    base: 'split',
    instead: [
      ['refrigerant R-22 -> R-454B', 'refrigerant R-22 -> R-410A # <- here'],
      ['holds R-454B', 'holds R-410A'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const facts = newFacts(plan);
    const law = lawDateNamed('technology-transition-ac');
    if (!facts || !law || plan.day === null || !overWarming(plan, facts) || !inForce(law.name, plan.day)) return;
    const strict =
      inForce('technology-transition-ac-installation', plan.day) &&
      !inForce('technology-transition-amendment', plan.day);
    if (!strict)
      say(
        whole,
        law,
        facts,
        'only equipment made before 2025 may be installed with it, so read the plate and accept this with what it says',
      );
  },
});
