import type { Item } from '../../../grammar/tree';
import type { Cause } from '../circuit/state';
import type { Edit, Finding, Place, Related, Severity } from '../finding';
import type { Bound } from '../plan/bind';
import { wordSpan } from '../plan/gather';
import type { Acceptance, Plan } from '../plan/plan';
import type { Span } from '../plan/read-terms';
import { isUnread, type Step } from '../plan/step';
import type { Name } from '../plan/term';
import type { PlanView } from '../view';
import type { Entry, Walk } from '../walk/walk';
import { checks } from './all';
import type { Check, RelatedTo, Report, Say, Whole } from './define';
import { listed } from './listed';
import { mendIn } from './mend';
import { type Raw, stepRaws, wordRaws } from './raw';

/** All findings of a walked plan: one a cause, the gravest first, what is accepted with a reason left out. */
export function check(view: PlanView): readonly Finding[] {
  const raws = stepRaws(view);
  for (const each of checks) each.plan?.(wholeOf(each, view, raws));
  if (raws.length === 0 && view.plan.acceptances.length === 0) return [];
  return accept(worded(absorbed(gathered(raws)), view), view.plan);
}

/**
 * What single steps give rise to, before the plan is looked at as a whole: it costs little after an edit, since what was
 * found at a step is kept with it. What is accepted is left out.
 */
export function checkSteps(view: PlanView): readonly Finding[] {
  return unaccepted(stepRaws(view), view);
}

/** What the words of the steps give rise to, before anything is walked. */
export const checkWords = (view: PlanView): readonly Finding[] => unaccepted(wordRaws(view.plan), view);

function unaccepted(raws: readonly Raw[], view: PlanView): readonly Finding[] {
  if (raws.length === 0) return [];
  const accepted = (finding: Finding): boolean =>
    view.plan.acceptances.some(
      ({ check: name, reason, step }) =>
        name === finding.name && reason !== null && (step === null || finding.at.item === step.bound.item),
    );
  return worded(absorbed(gathered(raws)), view).filter((finding) => !accepted(finding));
}

function wholeOf(each: Check, view: PlanView, raws: Raw[]): Whole {
  const { plan } = view;
  const at = (bound: Bound, span: Span, report: Report, file = plan.file, entry: Entry | null = null): void => {
    raws.push({ check: each, report, file, bound, span, entry });
  };
  return {
    view,
    plan,
    entries: view.walk.entries,
    report: (entry, report) => {
      const { step } = entry.slot;
      if (report.slot && isUnread(step, report.slot)) return;
      at(step.bound, (report.slot && step.spans[report.slot]) || wordSpan(step.bound), report, step.file, entry);
    },
    reportAt: (bound, span, report, file) => at(bound, span, report, file),
    reportPart: (part, report) => {
      const bound = plan.partStatements[part]!;
      at(bound, bound.label ?? wordSpan(bound), report);
    },
  };
}

/** One finding for each cause: the same root, or the same words at the same place in two rounds, count once. */
function gathered(raws: readonly Raw[]): readonly Group[] {
  const groups: { first: Raw; others: Raw[] }[] = [];
  const byRoot = new Map<Check, Map<unknown, { first: Raw; others: Raw[] }>>();
  for (const raw of raws) {
    const root = raw.report.root ?? raw.entry?.slot.step ?? raw.bound;
    let roots = byRoot.get(raw.check);
    if (!roots) byRoot.set(raw.check, (roots = new Map()));
    const group = roots.get(root);
    if (group && (raw.report.root !== undefined || sameWords(group.first, raw))) {
      if (!sameWords(group.first, raw) || raw.bound !== group.first.bound) group.others.push(raw);
      continue;
    }
    const fresh = { first: raw, others: [] };
    if (!group) roots.set(root, fresh);
    groups.push(fresh);
  }
  return groups;
}

interface Group {
  readonly first: Raw;
  readonly others: readonly Raw[];
}

/** Puts what follows from another check's finding under that finding. */
function absorbed(groups: readonly Group[]): readonly Group[] {
  if (!groups.some((group) => group.first.check.yieldsTo)) return groups;
  const under = new Map<Group, Raw[]>();
  // A group may hold thousands: its parts are gathered once, and only groups of the checks that it yields to are looked at.
  const parts = new Map(groups.map((group) => [group, concernsOf(group)]));
  const byCheck = new Map<string, Group[]>();
  for (const group of groups) {
    const known = byCheck.get(group.first.check.name);
    if (known) known.push(group);
    else byCheck.set(group.first.check.name, [group]);
  }
  const order = new Map(groups.map((group, at) => [group, at]));
  const left = groups.filter((group) => {
    const cause = (group.first.check.yieldsTo ?? [])
      .flatMap(
        (name) =>
          byCheck.get(name)?.find((other) => other !== group && meet(parts.get(other)!, parts.get(group)!)) ?? [],
      )
      .sort((a, b) => order.get(a)! - order.get(b)!)[0];
    if (!cause) return true;
    const held = under.get(cause);
    if (held) held.push(group.first);
    else under.set(cause, [group.first]);
    return false;
  });
  return left.map((group) => ({ first: group.first, others: [...group.others, ...(under.get(group) ?? [])] }));
}

/** The parts that a group is about, or all of them. */
type Concerns = ReadonlySet<number> | 'all';

function concernsOf(group: Group): Concerns {
  const found = new Set<number>();
  for (const raw of [group.first, ...group.others]) {
    if (raw.report.concerns === undefined) return 'all';
    for (const part of raw.report.concerns) found.add(part);
  }
  return found;
}

function meet(one: Concerns, other: Concerns): boolean {
  if (one === 'all' || other === 'all') return true;
  for (const part of one) if (other.has(part)) return true;
  return false;
}

const sameWords = (a: Raw, b: Raw): boolean =>
  a.bound === b.bound && a.span.from === b.span.from && a.entry?.slot.round !== b.entry?.slot.round;

const placeOf = (raw: Raw): Place => ({ file: raw.file, item: raw.bound.item, ...raw.span });

/** Places shown beside a finding: nobody goes through hundreds, and an editor carries them at each key press. */
const mostPlaces = 12;

/** Where the same is found again: the first places, and how many there are beside them. */
function alike(others: readonly Raw[]): readonly Related[] {
  const shown = others.slice(0, mostPlaces).map((other) => ({ at: placeOf(other), message: 'and here' }));
  const left = others.length - shown.length;
  if (left > 0) shown.at(-1)!.message = `and here, and in ${left} more ${left === 1 ? 'place' : 'places'}`;
  return shown;
}

/** Findings that stand for one, too, that is never accepted: accepting the cause must not hide it. */
const holdsGravest = new WeakSet<Finding>();

const severityOf = ({ check, report }: Raw): Severity => report.severity ?? check.severity;
const gravest = (raws: readonly Raw[]): Severity =>
  raws.map(severityOf).reduce((most, each) => (gravity[each] < gravity[most] ? each : most));

const gravity: Readonly<Record<Severity, number>> = { error: 0, warning: 1, information: 2 };

function worded(groups: readonly Group[], view: PlanView): readonly Finding[] {
  const say = sayer(view);
  const seen = new Map<string, readonly Item[]>();
  const found = groups.map(({ first, others }): Finding => {
    const { check: each, report } = first;
    const related: Related[] = [
      ...(report.related ?? []).flatMap((related) => relatedPlace(related, view, say)),
      ...parameterOf(first, view),
      ...alike(others),
    ];
    const fixes = (report.fixes ?? []).flatMap((way) => {
      const edits: readonly (Edit | null)[] = way.edits(mendIn(view));
      return edits.length > 0 && edits.every((edit) => edit !== null)
        ? [{ title: way.title, safe: way.safe ?? false, edits: edits as readonly Edit[] }]
        : [];
    });
    const finding: Finding = {
      name: each.name,
      // What follows from a cause makes it as grave as the gravest of it.
      severity: gravest([first, ...others]),
      message: begun(typeof report.message === 'string' ? report.message : report.message(say)),
      at: placeOf(first),
      related: eachPlaceOnce(related, placeOf(first)),
      fixes,
    };
    if (others.some((other) => !other.check.acceptable && severityOf(other) === 'error')) holdsGravest.add(finding);
    return finding;
  });
  // Two entries of one step may say the same thing; it is said once.
  const unique = found.filter((finding) => {
    const key = `${finding.name}|${finding.at.from}|${finding.message}`;
    const known = seen.get(key) ?? [];
    if (known.includes(finding.at.item)) return false;
    seen.set(key, [...known, finding.at.item]);
    return true;
  });
  return unique.sort((a, b) => gravity[a.severity] - gravity[b.severity]);
}

/** Rounds and entries of one step name one line several times: it is shown once, and the finding's own line not again. */
function eachPlaceOnce(related: readonly Related[], own: Place): readonly Related[] {
  const same = (a: Place, b: Place): boolean => a.item === b.item && a.from === b.from && a.file === b.file;
  return related.filter(({ at }, k) => !same(at, own) && related.findIndex((other) => same(other.at, at)) === k);
}

/** A figure that the step takes from the head of the plan by its name: where it is stated. */
function parameterOf({ report, entry }: Raw, { plan }: PlanView): readonly Related[] {
  const stated = plan.parameters.testPressure;
  const value = report.slot === undefined ? undefined : (entry?.slot.step.values[report.slot] as Name | undefined);
  if (!stated || value?.refers === undefined || value.text !== 'test-pressure') return [];
  return [{ at: { file: plan.file, item: stated.bound.item, ...stated.span }, message: 'the pressure is stated here' }];
}

/** A sentence that begins with the number of a step begins with a capital; names of parts stay as the plan writes them. */
const begun = (message: string): string => message.replace(/^step (?=\d)/, 'Step ');

function relatedPlace(related: RelatedTo, view: PlanView, say: Say): readonly Related[] {
  const message = typeof related.message === 'string' ? related.message : related.message(say);
  if (related.bound)
    return [
      {
        at: {
          file: related.file ?? view.plan.file,
          item: related.bound.item,
          ...(related.span ?? wordSpan(related.bound)),
        },
        message,
      },
    ];
  if (related.part !== undefined) {
    const bound = view.plan.partStatements[related.part];
    return bound
      ? [{ at: { file: view.plan.file, item: bound.item, ...(bound.label ?? wordSpan(bound)) }, message }]
      : [];
  }
  const entry = related.cause ? view.walk.entries.find((each) => each.cause === related.cause) : undefined;
  if (!entry) return [];
  const { step } = entry.slot;
  return [{ at: { file: step.file, item: step.bound.item, ...wordSpan(step.bound) }, message }];
}

/** Names steps by the number under which the sheet prints them. */
export function sayer(view: PlanView): Say {
  const entryOf = (cause: Cause): Entry | undefined => namesOf(view.walk).entries.get(cause);
  return {
    step: (cause) => {
      const entry = cause && entryOf(cause);
      return entry ? `step ${numberOf(view, entry)} (${entry.slot.step.text})` : 'the beginning';
    },
    part: (index) => view.plan.graph.parts[index]?.name ?? '?',
    parts: (indexes) => listed(indexes.map((index) => view.plan.graph.parts[index]?.name ?? '?')),
  };
}

/** The number of a step on the sheet: steps count through, a repeat's rounds once. */
export const numberOf = (view: PlanView, entry: Entry): number => namesOf(view.walk).numbers.get(entry.slot.step) ?? 0;

interface StepNames {
  readonly numbers: ReadonlyMap<Step, number>;
  readonly entries: ReadonlyMap<Cause, Entry>;
}
const names = new WeakMap<Walk, StepNames>();

/** The numbers of a walk's steps and the entries of its causes; found once a walk, when somebody asks. */
function namesOf(walk: Walk): StepNames {
  let known = names.get(walk);
  if (!known) {
    const numbers = new Map<Step, number>();
    const entries = new Map<Cause, Entry>();
    for (const entry of walk.entries) {
      if (!numbers.has(entry.slot.step)) numbers.set(entry.slot.step, numbers.size + 1);
      if (!entries.has(entry.cause)) entries.set(entry.cause, entry);
    }
    names.set(walk, (known = { numbers, entries }));
  }
  return known;
}

/** Leaves out what the author accepted with a reason; an acceptance that is not allowed, or accepts nothing, is a finding itself. */
function accept(findings: readonly Finding[], plan: Plan): readonly Finding[] {
  if (plan.acceptances.length === 0) return findings;
  const extra: Finding[] = [];
  const left = new Set(findings);
  for (const acceptance of plan.acceptances) {
    const matching = findings.filter(
      (finding) =>
        finding.name === acceptance.check &&
        (acceptance.step === null || finding.at.item === acceptance.step.bound.item),
    );
    const known = checks.find((each) => each.name === acceptance.check);
    const at = (name: string, severity: Severity, message: string): void =>
      void extra.push(acceptanceFinding(acceptance, name, severity, message));
    if (!known) at('unknown-name', 'error', `There is no finding called "${acceptance.check}".`);
    else if (!acceptance.reason)
      at('acceptance-without-reason', 'error', `An accepted finding needs its reason: because "…".`);
    else if (!known.acceptable || matching.some((finding) => holdsGravest.has(finding)))
      at(
        'never-accepted',
        'error',
        `"${acceptance.check}" cannot be accepted: somebody is hurt, a law is broken or equipment is destroyed.`,
      );
    else if (matching.length === 0)
      at('idle-acceptance', 'warning', `This accepts nothing: there is no finding "${acceptance.check}" here.`);
    else for (const finding of matching) left.delete(finding);
  }
  return [...left, ...extra].sort((a, b) => gravity[a.severity] - gravity[b.severity]);
}

function acceptanceFinding(acceptance: Acceptance, name: string, severity: Severity, message: string): Finding {
  const span = acceptance.bound.spans['check'] ?? wordSpan(acceptance.bound);
  return {
    name,
    severity,
    message,
    at: { file: acceptance.file, item: acceptance.bound.item, ...span },
    related: [],
    fixes: [],
  };
}
