import type { Part } from '../../circuit/graph';
import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import type { Name } from '../../plan/term';
import { oilFit } from '../../reference/refrigerant-facts';
import { defineCheck, type Here, type WayOut, type Whole } from '../define';
import { isCompressor } from '../plant';
import { newFacts, oilFamily, systemSpot } from '../plant-facts';
import { writeAt } from '../ways-out';

/** An oil that does not come back with the new refrigerant. */
export const oilDoesNotSuit = defineCheck({
  name: 'oil-does-not-suit',
  severity: 'error',
  title: 'The oil does not suit the new refrigerant',
  acceptable: false,
  reads: 'figure',
  ground: 'published',
  meaning:
    'The oil that the machine will run with, or that a step fills in, does not dissolve in the new refrigerant; or a step fills in an oil of another family than the system is to run on, or a compressor is stated with an oil of another family than the system runs on, which is a warning.',
  why: 'It leaves the compressor, stays in the coil, and the bearings run dry.',
  source: 'oil and refrigerant pairs of the reference table (handbook 4.1)',
  wrong: { base: 'split', instead: [['oil mineral -> POE', 'oil mineral # <- here']] },
  right: { base: 'split' },
  step(here) {
    const filled = (here.step.values['to'] ?? here.step.values['with']) as { a?: unknown } | undefined;
    const name = filled?.a as Name | undefined;
    if (name?.refers !== 'oil') return;
    const why = oilMisfit(here.plan, name.text);
    const { after } = here.plan.system.oil;
    if (!why) {
      otherFamily(here, name);
      return;
    }
    here.report({
      message: `${why}: fill in one that does.`,
      slot: 'to' in here.step.values ? 'to' : 'with',
      fixes: after !== null && oilMisfit(here.plan, after) === null ? writeAt(here.step, name, after) : [],
    });
  },
  plan(whole) {
    const { plan } = whole;
    const why = oilMisfit(plan, plan.system.oil.after);
    const facts = newFacts(plan);
    const family = oilFamily(plan, plan.system.oil.after);
    const [bound, span] = systemSpot(plan, 'oil', 'after', 'before');
    if (why) {
      whole.reportAt(bound, span, {
        message: `${why}: change to ${facts?.oils.join(' or ')} and plan the oil rounds.`,
        fixes: suiting(plan, facts?.oils[0]),
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
      const stated = child(plan.partStatements[part.index]?.block ?? [], 'oil');
      const wrong = kind ? oilMisfit(plan, kind) : null;
      if (wrong && stated && part.standing !== 'kept' && part.standing !== 'removed')
        whole.reportAt(stated, wordSpan(stated), { message: `${wrong}, and ${part.name} comes with it.` });
      else if (kind && stated && isOther(whole, part, kind))
        whole.reportAt(stated, wordSpan(stated), {
          severity: 'warning',
          message: `${part.name} is stated with ${kind}, and the system${part.standing === 'kept' && plan.system.oil.before !== plan.system.oil.after ? ` held ${plan.system.oil.before} and` : ''} runs on ${plan.system.oil.after}: read the plate of the compressor again, or plan to change its oil.`,
          related: [{ bound, span, message: 'the oil that the system is said to run on' }],
        });
    }
  },
});

/** An oil of another family than the one that the machine is to run on goes in: they do not mix, or give sludge. */
function otherFamily(here: Here, name: Name): void {
  const { after } = here.plan.system.oil;
  const own = oilFamily(here.plan, after);
  const filled = oilFamily(here.plan, name.text);
  if (after === null || !own || !filled || own === filled || here.plan.graph.circuits.length > 1) return;
  here.report({
    severity: 'warning',
    message: `${name.text} goes in here, and the system is to run on ${after}: fill in that, or state the other in the head.`,
    slot: 'to' in here.step.values ? 'to' : 'with',
    fixes: writeAt(here.step, name, after),
  });
}

/** Whether a part is stated with an oil of another family than the system has, or had where it stays; one that is changed may be. */
function isOther({ plan, entries }: Whole, part: Part, kind: string): boolean {
  const { before, after } = plan.system.oil;
  const stays = part.standing === 'kept' || part.standing === 'reused';
  const own = [after, stays ? before : null].flatMap((oil) => oilFamily(plan, oil) ?? []);
  const family = oilFamily(plan, kind);
  if (part.standing === 'removed' || !family || own.length === 0 || own.includes(family)) return false;
  if (plan.graph.circuits.length > 1) return false;
  return !entries.some(({ events }) =>
    events.some((event) => event.type === 'changes-oil' && event.part === part.index),
  );
}

/** Why an oil does not go with the new refrigerant; null where it does, or where nothing is known of it. */
export function oilMisfit(plan: Plan, oil: string | null): string | null {
  const facts = newFacts(plan);
  const family = oilFamily(plan, oil);
  if (!facts || !family || oilFit(facts.name, family) !== 'does-not-suit') return null;
  return `${oil} does not carry ${facts.name}, which wants ${facts.oils.join(' or ')}`;
}

/** Another oil in the plan's head. Where a compressor stays, its oil rounds are more than one edit. */
function suiting(plan: Plan, oil: string | undefined): readonly WayOut[] {
  const { before, after } = plan.system.oil;
  const bound = child(plan.system.bound?.block ?? [], 'oil');
  const stays = plan.graph.parts.some((part) => isCompressor(part) && part.standing === 'kept');
  if (oil === undefined || !bound || stays) return [];
  const { before: from, after: to } = bound.spans;
  const span = from ?? to;
  if (!span) return [];
  const text = `${before === null || before === oil ? '' : `${before} -> `}${oil}`;
  return [
    {
      title: after === null || before === after ? `Change to ${oil}` : `Write "${oil}"`,
      edits: (mend) => [mend.change(bound, { from: span.from, to: to?.to ?? span.to }, text)],
    },
  ];
}
