import type { Name } from '../../plan/term';
import { oilFit } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { newFacts, oilFamily, systemSpot } from '../plant-facts';

/** An oil that does not come back with the new refrigerant. */
export const oilDoesNotSuit = defineCheck({
  name: 'oil-does-not-suit',
  severity: 'error',
  title: 'The oil does not suit the new refrigerant',
  acceptable: false,
  reads: 'figure',
  ground: 'published',
  meaning: 'The oil that the machine will run with, or that a step fills in, does not dissolve in the new refrigerant.',
  why: 'It leaves the compressor, stays in the coil, and the bearings run dry.',
  source: 'oil and refrigerant pairs of the reference table (handbook 4.1)',
  wrong: { base: 'split', instead: [['oil mineral -> POE', 'oil mineral # <- here']] },
  right: { base: 'split' },
  step(here) {
    const filled = (here.step.values['to'] ?? here.step.values['with']) as { a?: unknown } | undefined;
    const name = filled?.a as Name | undefined;
    if (name?.refers !== 'oil') return;
    const why = misfit(here.plan, name.text);
    if (why) here.report({ message: `${why}: fill in one that does.`, slot: 'to' in here.step.values ? 'to' : 'with' });
  },
  plan(whole) {
    const { plan } = whole;
    const why = misfit(plan, plan.system.oil.after);
    const facts = newFacts(plan);
    const family = oilFamily(plan, plan.system.oil.after);
    const [bound, span] = systemSpot(plan, 'oil', 'after', 'before');
    if (why) {
      whole.reportAt(bound, span, {
        message: `${why}: change to ${facts?.oils.join(' or ')} and plan the oil rounds.`,
      });
      return;
    }
    if (facts && family && oilFit(facts.name, family) === 'with-care')
      whole.reportAt(bound, span, {
        severity: 'information',
        message: `${plan.system.oil.after} carries ${facts.name} only in part: watch the oil level, most of all up risers.`,
      });
    for (const part of plan.graph.parts) {
      const kind = part.properties.oil?.kind;
      const wrong = kind ? misfit(plan, kind) : null;
      if (wrong && part.standing !== 'kept' && part.standing !== 'removed')
        whole.reportPart(part.index, { message: `${wrong}, and ${part.name} comes with it.` });
    }
  },
});

function misfit(plan: Parameters<typeof newFacts>[0], oil: string | null): string | null {
  const facts = newFacts(plan);
  const family = oilFamily(plan, oil);
  if (!facts || !family || oilFit(facts.name, family) !== 'does-not-suit') return null;
  return `${oil} does not carry ${facts.name}, which wants ${facts.oils.join(' or ')}`;
}
