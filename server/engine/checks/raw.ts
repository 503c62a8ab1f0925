import type { Bound } from '../plan/bind';
import { wordSpan } from '../plan/gather';
import type { Plan } from '../plan/plan';
import type { Span } from '../plan/read-terms';
import { isUnread, type Step } from '../plan/step';
import type { PlanView } from '../view';
import type { Entry } from '../walk/walk';
import { checks } from './all';
import type { Check, Report } from './define';
import { hereOf } from './here';
import { keptByRow } from './kept-by-row';

/** A finding before it is worded: what a check said, and where. */
export interface Raw {
  readonly check: Check;
  readonly report: Report;
  readonly file: string;
  readonly bound: Bound;
  readonly span: Span;
  readonly entry: Entry | null;
}

const none: readonly Raw[] = [];

/** What words and single walked steps give rise to, in the order of the steps; the list is the caller's own. */
export const stepRaws = (view: PlanView): Raw[] => [...wordRaws(view.plan), ...entryRaws(view)];

/** What the words of the steps give rise to, before anything is walked. */
export const wordRaws = (plan: Plan): readonly Raw[] => wordsOf(plan, plan.steps);

/** What is found at single steps, in the order of the steps. */
const entryRaws = ({ plan, walk }: PlanView): readonly Raw[] => entriesOf(plan, walk.entries);

const wordChecks = checks.filter((each) => each.words !== undefined);
/** The checks that look at single steps: most steps are nothing to most of them, so all share one view of the step. */
const stepChecks = checks.filter((each) => each.step !== undefined);

/** What is said amiss in steps, and in the steps under them. */
const wordsOf = keptByRow<Step, Raw>((plan, steps) => steps.map((step) => wordRawsIn(plan, step)));

const ofStep = new WeakMap<Step, { readonly head: Plan['head']; readonly raws: readonly Raw[] }>();

/** Remembered by the step: a phase is new as soon as a step under it is. */
function wordRawsIn(plan: Plan, step: Step): readonly Raw[] {
  const known = ofStep.get(step);
  if (known?.head === plan.head) return known.raws;
  let raws: Raw[] | null = null;
  for (const each of wordChecks) {
    each.words!({
      plan,
      step,
      per: (step.values['per'] as string | undefined) ?? null,
      report: (report) => {
        const span = (report.slot && step.spans[report.slot]) || wordSpan(step.bound);
        raws ??= [];
        raws.push({ check: each, report, file: step.file, bound: step.bound, span, entry: null });
      },
    });
  }
  const own = (raws ?? none) as readonly Raw[];
  const under = step.children.flatMap((inner) => wordRawsIn(plan, inner));
  const found = under.length > 0 ? [...own, ...under] : own;
  ofStep.set(step, { head: plan.head, raws: found });
  return found;
}

const ofEntry = new WeakMap<Entry, { readonly head: Plan['head']; readonly raws: readonly Raw[] }>();

const entriesOf = keptByRow<Entry, Raw>((plan, entries) => {
  const fresh = entries.filter((entry) => ofEntry.get(entry)?.head !== plan.head);
  const found = look(plan, fresh);
  fresh.forEach((entry, at) => void ofEntry.set(entry, { head: plan.head, raws: found[at] ?? none }));
  return entries.map((entry) => ofEntry.get(entry)!.raws);
});

/**
 * Steps that are new are looked at by one check after the other, not one step after the other: a check that stays at work
 * is many times faster than a hundred that take turns.
 */
function look(plan: Plan, fresh: readonly Entry[]): readonly (readonly Raw[] | undefined)[] {
  const found: Raw[][] = [];
  let current = stepChecks[0]!;
  const heres = fresh.map((entry, at) =>
    hereOf(plan, entry, (report) => {
      const { step } = entry.slot;
      if (report.slot && isUnread(step, report.slot)) return;
      const span = (report.slot && step.spans[report.slot]) || wordSpan(step.bound);
      (found[at] ??= []).push({ check: current, report, file: step.file, bound: step.bound, span, entry });
    }),
  );
  for (const each of stepChecks) {
    current = each;
    for (const here of heres) each.step!(here);
  }
  return found;
}
