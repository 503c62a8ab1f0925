import type { Part } from '../../circuit/graph';
import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { eachStep, type Step } from '../../plan/step';
import type { Amount } from '../../plan/term';
import { exactly } from '../../quantity';
import type { Flow } from '../../steps/events';
import { vocabulary } from '../../vocabulary';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { type HouseRule, houseRules, isPartWord, type Need } from '../house-rules';
import { lines, newFacts } from '../plant-facts';
import { roundedLimit } from '../rounding';
import { brought } from '../stock';
import { gauge, shown, vacuum } from '../support';
import { writeAt, written, writtenGauge } from '../ways-out';

const shop = `house-rules shop {
  revision 1

  every brazed joint needs nitrogen
  every changeout needs hold by lead before connect as error
  every final purge at least 100 psig, unless per
  every decay-test at least 15 min
}`;
const sound: readonly (readonly [string, string])[] = [
  ['  trim each kept line', '  hold "Cloth clean" by lead\n  trim each kept line'],
];

/** What the shop asks beyond the built-in checks. */
export const houseRuleBroken = defineCheck({
  name: 'house-rule-broken',
  severity: 'warning',
  title: 'A house rule is broken',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['wet-with-solvent'],
  meaning:
    'The plan is under house rules, and a joint, a line, a step or the job as a whole does not have what one of them asks. The severity is the one that the rule states.',
  why: 'The shop has its reasons; a departure is accepted with one, and prints.',
  source: 'the house rules that the plan is under',
  wrong: {
    base: 'split',
    file: shop,
    plan: 'under shop',
    instead: [
      ...sound,
      ['for 15 min, rise', 'for 10 min, rise'],
      ['rise at most 300 micron', 'rise at most 300 micron # <- here'],
    ],
  },
  right: { base: 'split', file: shop, plan: 'under shop', instead: sound },
  plan(whole) {
    for (const rule of houseRules(whole.plan)) check(whole, rule);
  },
});

function check(whole: Whole, rule: HouseRule): void {
  const { subject } = rule;
  if (!subject) return;
  switch (subject.of) {
    case 'job': {
      const { plan } = whole;
      if (subject.kind && !plan.kinds.includes(subject.kind)) return;
      if (subject.safetyClass && newFacts(plan)?.safetyClass !== subject.safetyClass) return;
      for (const need of rule.needs) if (!jobHas(whole, need)) broken(whole, rule, `the job has no ${need.text}`);
      return;
    }
    case 'joint':
      joints(whole, rule, subject);
      return;
    case 'line':
      ofLines(whole, rule, subject);
      return;
    case 'final purge':
      finalPurges(whole, rule);
      return;
    case 'step':
      steps(whole, rule, subject.verb);
      return;
  }
}

/** At a step, or at the line that puts the plan under the rules. */
function broken(
  whole: Whole,
  rule: HouseRule,
  what: string,
  entry?: Entry,
  slot?: string,
  fixes: readonly WayOut[] = [],
): void {
  const report = {
    severity: rule.severity,
    message: `House rule "${rule.text}": ${what}.`,
    related: [{ bound: rule.bound, file: rule.file, message: 'the rule' }],
    fixes,
  };
  if (entry) {
    whole.report(entry, { ...report, ...(slot && { slot }), root: `${rule.text} ${entry.slot.step.text}` });
    return;
  }
  const { bound } = whole.plan.declaration;
  const under = child(bound.block, 'under') ?? bound;
  whole.reportAt(under, under.spans['rules'] ?? wordSpan(under), { ...report, root: `${rule.text} ${what}` });
}

function jobHas(whole: Whole, need: Need): boolean {
  const { plan } = whole;
  const [first = '', ...rest] = need.words;
  if (vocabulary.word('bring', first)) return plan.bring === null || brought(plan, first).length > 0;
  if (need.words.length === 1 && isPartWord(first) && !vocabulary.word('steps', first))
    return plan.graph.parts.some((part) => isSuch(part, first));
  if (vocabulary.word('steps', first)) {
    const all = [...eachStep(plan.steps)];
    const matching = all.filter((step) => isStep(step, first, rest, need.by));
    const at = (verb: string): number => all.findIndex((step) => step.word.word === verb || step.label === verb);
    if (need.before) {
      const border = at(need.before);
      return border < 0 ? matching.length > 0 : matching.some((step) => all.indexOf(step) < border);
    }
    if (need.after) {
      const border = at(need.after);
      return border < 0 ? matching.length > 0 : matching.some((step) => all.indexOf(step) > border);
    }
    return matching.length > 0;
  }
  // A tool is known by the text under which it is brought.
  return plan.bring === null || plan.bring.some((item) => item.name.toLowerCase().includes(need.text.toLowerCase()));
}

function isSuch(part: Part, word: string): boolean {
  if (part.standing === 'removed') return false;
  if (part.name === word || part.kind.kind === word) return true;
  if (word === 'suction-drier') return part.kind.kind === 'filter-drier' && !part.highSide;
  if (word === 'liquid-drier') return part.kind.kind === 'filter-drier' && part.highSide;
  return false;
}

function isStep(step: Step, verb: string, rest: readonly string[], by: string | null): boolean {
  if (step.word.word !== verb) return false;
  const who = step.values['by'] ?? child(step.bound.block, 'by')?.values['who'] ?? (verb === 'hold' ? 'lead' : null);
  if (by !== null && who !== by) return false;
  return rest.every((word) => step.text.includes(word));
}

function joints(
  whole: Whole,
  rule: HouseRule,
  subject: { readonly torch: boolean | null; readonly joint: string | null },
): void {
  for (const entry of whole.entries) {
    for (const event of entry.events) {
      if (event.type !== 'joins') continue;
      const part = whole.plan.graph.parts[event.part]!;
      if (subject.torch !== null && event.torch !== subject.torch) continue;
      if (subject.joint !== null && part.properties.joint !== subject.joint) continue;
      for (const need of rule.needs) {
        const has = need.text === 'nitrogen' ? event.nitrogen !== null : (event.with ?? '').includes(need.text);
        if (!has) broken(whole, rule, `${part.name} is joined without it`, entry, 'what');
      }
    }
  }
}

function ofLines(whole: Whole, rule: HouseRule, subject: { readonly flushed: boolean; readonly kept: boolean }): void {
  const { plan } = whole;
  for (const line of lines(plan)) {
    if (subject.kept && line.standing !== 'kept' && line.standing !== 'reused') continue;
    const flush = whole.entries.find((entry) =>
      entry.events.some((event) => event.type === 'flows' && event.purpose === 'flush' && event.line === line.index),
    );
    if (subject.flushed && !flush) continue;
    const state = (flush ?? whole.entries.at(-1))?.before.parts[line.index];
    if (!state) continue;
    for (const need of rule.needs) {
      const [verb = ''] = need.words;
      const has =
        verb === 'inspect'
          ? state.inspected !== null
          : verb === 'drain'
            ? state.drained !== null
            : whole.entries.some((entry) => entry.slot.step.word.word === verb && touches(entry, line.index));
      if (!has)
        broken(whole, rule, `${line.name} has no ${need.text}${flush ? ' before it is flushed' : ''}`, flush, 'what');
    }
  }
}

const touches = (entry: Entry, part: number): boolean =>
  entry.before.parts[part] !== entry.after.parts[part] ||
  entry.events.some((event) => 'line' in event && event.line === part);

/** The last purge that follows a flush of each line. */
function finalPurges(whole: Whole, rule: HouseRule): void {
  const last = new Map<number, { readonly entry: Entry; readonly flow: Flow }>();
  for (const entry of whole.entries)
    for (const event of entry.events)
      if (event.type === 'flows' && event.purpose === 'purge') last.set(event.line, { entry, flow: event });
  for (const { entry, flow } of last.values())
    limits(whole, rule, entry, { level: flow.level, time: flow.time, rise: null });
}

function steps(whole: Whole, rule: HouseRule, verb: string): void {
  for (const entry of whole.entries) {
    if (entry.slot.step.word.word !== verb) continue;
    for (const need of rule.needs)
      if (
        !entry.slot.step.text.includes(need.text) &&
        !entry.slot.step.bound.block.some((each) => each.word?.word === need.words[0])
      )
        broken(whole, rule, `this step has no ${need.text}`, entry);
    for (const event of entry.events) {
      if (event.type === 'stands') limits(whole, rule, entry, { level: null, time: event.time, rise: event.rise });
      else if (event.type === 'pressurises' || event.type === 'flows')
        limits(whole, rule, entry, { level: event.level, time: event.time, rise: null });
      else if (event.type === 'evacuates' || event.type === 'recovers')
        limits(whole, rule, entry, { level: event.level, time: null, rise: null });
    }
  }
}

interface Done {
  readonly level: number | null;
  readonly time: { readonly low: number; readonly high: number } | null;
  readonly rise: number | null;
}

function limits(whole: Whole, rule: HouseRule, entry: Entry, done: Done): void {
  const { step } = entry.slot;
  if (rule.unlessPer && typeof step.values['per'] === 'string') return;
  for (const [limit, least] of [
    [rule.least, true],
    [rule.most, false],
  ] as const) {
    if (!limit) continue;
    // Of a decay test a level of so many micron is its rise.
    const kind =
      limit.kind === 'pressure' && done.level === null && done.rise !== null ? 'pressure-difference' : limit.kind;
    const is =
      kind === 'time'
        ? least
          ? done.time?.low
          : done.time?.high
        : kind === 'pressure-difference'
          ? done.rise
          : done.level;
    const slot = kind === 'time' ? 'time' : kind === 'pressure-difference' ? 'rise' : 'level';
    const name = kind === 'time' ? 'time' : kind === 'pressure-difference' ? 'rise' : 'pressure';
    if (is === undefined || is === null) {
      broken(whole, rule, `this step states no ${name}`, entry);
      continue;
    }
    const { atmosphere } = whole.plan.site;
    const stated = step.values[slot] as Amount | undefined;
    const bound = roundedLimit(least ? limit.low : limit.high, stated, atmosphere, least ? 'least' : 'most');
    if (least ? is >= bound * 0.999 : is <= bound * 1.001) continue;
    const text =
      kind === 'pressure'
        ? is < whole.plan.site.atmosphere / 2
          ? vacuum(whole.plan, is)
          : gauge(whole.plan, is)
        : shown(whole.plan, { kind, low: is, high: is });
    const figure = least ? limit.low : limit.high;
    const asked =
      kind !== 'pressure'
        ? written(whole.plan, exactly(kind, figure))
        : figure < whole.plan.site.atmosphere / 2
          ? vacuum(whole.plan, figure)
          : writtenGauge(whole.plan, figure);
    broken(whole, rule, `this step has ${text}`, entry, slot, writeAt(step, step.values[slot], asked));
  }
}
