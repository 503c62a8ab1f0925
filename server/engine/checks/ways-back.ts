import type { Plan } from '../plan/plan';
import type { PlanView } from '../view';
import { type Route, rehearse } from '../walk/rehearse';
import type { Entry } from '../walk/walk';
import type { Check, Report, Whole } from './define';
import { hereOf } from './here';
import { brokenAgain } from './once-more';

/** What breaks once a way has been gone: the entry at which it shows, and what is found there. */
export interface Broken<Way extends Route> {
  readonly way: Way;
  readonly entry: Entry;
  readonly report: Report;
}

type Shown = Pick<Broken<Route>, 'entry' | 'report'>;

/** What is said of a step that breaks: when it is gone through, what it met the other time, and how its place is named. */
export function reportOf(
  { entry, report }: Shown,
  root: unknown,
  said: { readonly when: string; readonly than: string; readonly here: string },
): Report {
  return {
    message: (say) =>
      `${said.when}, ${say.step(entry.cause)} meets another state than ${said.than}: ${typeof report.message === 'string' ? report.message : report.message(say)}`,
    root,
    ...(report.concerns && { concerns: report.concerns }),
    related: [{ cause: entry.cause, message: said.here }, ...(report.related ?? [])],
  };
}

/** Looks at each way to an earlier step with the checks of a single step, with those of a whole walk, and with what only a second time brings. */
export function brokenWays<Way extends Route>(
  view: PlanView,
  ways: readonly Way[],
  looked: { readonly steps: readonly Check[]; readonly wholes: readonly Check[] },
): readonly Broken<Way>[] {
  const { entries } = view.walk;
  if (ways.length === 0) return [];
  const found: Broken<Way>[] = [];
  const sound: { readonly way: Way; readonly again: readonly Entry[] }[] = [];
  for (const way of ways) {
    const known = rehearsed(view.plan, entries, way, ways);
    known.step ??= brokenStep(view.plan, known.path, way, entries, looked.steps);
    const { path } = known;
    const broken = known.step.found ?? (path.entries && brokenWhole(view, path.entries, looked.wholes, path.fresh));
    if (broken) found.push({ way, ...broken });
    else if (!path.entries) sound.push({ way, again: [...path.fresh.keys()] });
  }
  // Ways that leave the plant as if nothing had failed cannot touch each other: one walk with all of them in it will do.
  const together: Entry[] = [];
  entries.forEach((entry, at) => {
    together.push(entry);
    for (const { way, again } of sound) if (way.from === at) together.push(...again);
  });
  const wayOf = new Map(sound.flatMap(({ way, again }) => again.map((entry) => [entry, way] as const)));
  const all = sound.length > 0 ? brokenWhole(view, together, looked.wholes, wayOf) : null;
  if (all) found.push({ way: wayOf.get(all.entry) ?? sound[0]!.way, ...all });
  return found;
}

interface Known {
  readonly head: Plan['head'];
  readonly entries: readonly Entry[];
  readonly to: number;
  readonly path: ReturnType<typeof rehearse>;
  step: { readonly found: Shown | null } | null;
}
const byFailed = new WeakMap<Entry, Map<string, Known>>();

/** A way that mends hangs on nothing but the steps that it leads over: it is walked once for these. */
function rehearsed(plan: Plan, entries: readonly Entry[], way: Route, ways: readonly Route[]): Known {
  const failed = entries[way.from]!;
  let known = byFailed.get(failed);
  if (!known) byFailed.set(failed, (known = new Map()));
  const key = `${way.from - way.to} ${way.failed}`;
  const old = known.get(key);
  if (old?.head === plan.head && old.path.entries === null && sameBetween(old, entries, way)) return old;
  const later = ways.filter((other) => other.from > way.from);
  const fresh: Known = { head: plan.head, entries, to: way.to, path: rehearse(plan, entries, way, later), step: null };
  known.set(key, fresh);
  return fresh;
}

function sameBetween(old: Known, entries: readonly Entry[], { from, to }: Route): boolean {
  for (let at = to; at <= from; at++) if (old.entries[old.to + at - to] !== entries[at]) return false;
  return true;
}

/** The gravest thing at the first step, gone through again, at which anything breaks that was well the first time. */
function brokenStep(
  plan: Plan,
  path: Known['path'],
  { from }: Route,
  entries: readonly Entry[],
  checks: readonly Check[],
): { readonly found: Shown | null } {
  const later = new Set<number>();
  for (const [entry, place] of path.fresh) {
    const done = place <= from || later.has(place);
    later.add(place);
    const first = entries[place]!;
    for (const check of checks) {
      const report = foundBy(check, plan, entry);
      if (report && !foundBy(check, plan, first)) return { found: { entry, report } };
    }
    const report = brokenAgain(plan, first, entry, done);
    if (report) return { found: { entry, report } };
  }
  return { found: null };
}

/** What a check of single steps finds at one; the first thing, if it is no mere information. */
function foundBy(check: Check, plan: Plan, entry: Entry): Report | null {
  let found: Report | null = null;
  const here = hereOf(plan, entry, (report) => {
    if ((report.severity ?? check.severity) !== 'information') found ??= report;
  });
  check.step?.(here);
  return found;
}

/** The first thing that checks of a whole walk find in one with ways back in it, and not in the plan's own. */
function brokenWhole(
  view: PlanView,
  entries: readonly Entry[],
  checks: readonly Check[],
  again: ReadonlyMap<Entry, unknown>,
): Shown | null {
  for (const check of checks) {
    const [found] = foundIn(check, view, entries);
    if (!found) continue;
    const before = new Set(foundIn(check, view, view.walk.entries).map((each) => each.key));
    const fresh = foundIn(check, view, entries).filter((each) => !before.has(each.key));
    const broken = fresh.find((each) => again.has(each.entry)) ?? fresh[0];
    if (broken) return broken;
  }
  return null;
}

interface Found extends Shown {
  readonly key: unknown;
}

function foundIn(check: Check, view: PlanView, entries: readonly Entry[]): readonly Found[] {
  const found: Found[] = [];
  const { plan, walk } = view;
  const whole: Whole = {
    view: {
      plan,
      walk: { start: walk.start, entries },
      get takeOff() {
        return view.takeOff;
      },
      findings: [],
      stepFindings: [],
      wordFindings: [],
    },
    plan,
    entries,
    report: (entry, report) => {
      if ((report.severity ?? check.severity) !== 'information') found.push({ entry, report, key: entry.slot.step });
    },
    reportAt: () => undefined,
    reportPart: () => undefined,
  };
  check.plan?.(whole);
  return found;
}
