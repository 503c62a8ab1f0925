import { isLine } from '../../circuit/kinds';
import { wordSpan } from '../../plan/gather';
import type { JobKind, Plan } from '../../plan/plan';
import { statement } from '../course';
import { defineCheck } from '../define';
import { isCompressor } from '../plant';
import { changesRefrigerant, systemSpot } from '../plant-facts';

/** A kind of job that the plan's own head contradicts. */
export const kindDoesNotFit = defineCheck({
  name: 'kind-does-not-fit',
  severity: 'warning',
  title: 'The kind of job does not fit what the plan states',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['other-refrigerant', 'refrigerant-never-changed'],
  meaning:
    'The job is stated as new, and there is old refrigerant to recover, or old equipment that stays or goes; or as a repair, and the refrigerant is another one afterwards.',
  why: 'Which seals, controls, rounds of oil and labels are asked for goes by the kind of job, and so does the standard that may be followed.',
  source: 'what the words mean: common practice, no source',
  wrong: { base: 'split', instead: [['kind changeout', 'kind repair # <- here']] },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const against = contradicts(plan);
    const bound = statement(plan, 'kind');
    const span = bound?.spans['kinds'];
    if (!against || !bound) return;
    const [system, at] = systemSpot(plan, 'refrigerant');
    whole.reportAt(bound, span ?? wordSpan(bound), {
      message: `The job is stated as ${plan.kinds.join(' and ')}, and ${against}: name the kind that it is, perhaps ${likely(plan)}.`,
      related: [{ bound: system, span: at, message: 'the refrigerant before and after' }],
      fixes: span
        ? [{ title: `Make it a ${likely(plan)}`, edits: (mend) => [mend.change(bound, span, likely(plan))] }]
        : [],
    });
  },
});

function contradicts(plan: Plan): string | null {
  const only = (kind: JobKind): boolean => plan.kinds.every((each) => each === kind) && plan.kinds.length > 0;
  if (only('repair') && changesRefrigerant(plan))
    return `${plan.system.refrigerant.before} gives way to ${plan.system.refrigerant.after}`;
  if (!plan.kinds.includes('new')) return null;
  if (plan.system.recoverCharge) return 'there is an old charge to recover';
  const old = plan.graph.parts.find(
    (part) => !isLine(part.kind) && part.kind.equipment && (part.standing === 'kept' || part.standing === 'removed'),
  );
  return old && plan.kinds.length === 1 ? `${old.name} is there already` : null;
}

/** What the job is, by what becomes of the refrigerant and of the compressor. */
function likely(plan: Plan): JobKind {
  const renewed = plan.graph.parts.some((part) => isCompressor(part) && part.standing === 'new');
  if (renewed && changesRefrigerant(plan)) return 'changeout';
  return changesRefrigerant(plan) ? 'conversion' : 'repair';
}
