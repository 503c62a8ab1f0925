import { blockStart, type Item, textOf } from '../../../../grammar';
import type { Cause } from '../../circuit/state';
import type { Bound } from '../../plan/bind';
import type { Plan } from '../../plan/plan';
import { eachStep, type Step } from '../../plan/step';
import type { Amount as Authored } from '../../plan/term';
import type { Figure } from '../../takeoff/figure';
import type { PlanView } from '../../view';
import type { Entry, Walk } from '../../walk/walk';
import type { Amount } from '../sentence';
import { type Ruler, rulerOf, type Units } from './ruler';

export interface Source {
  readonly path: string;
  readonly text: string;
}

/** What every section of the sheet draws on: the plan with all that follows from it, and how its steps are numbered. */
export interface Sheet {
  readonly view: PlanView;
  readonly plan: Plan;
  readonly walk: Walk;
  readonly ruler: Ruler;
  /** The walked entries of a step: one, or the first and the last round of a repeat. */
  entriesOf(step: Step): readonly Entry[];
  /** The number that a step, or the first step of a block, has on the sheet; null where nothing is in it. */
  numberOf(step: Step): string | null;
  numberOfCause(cause: Cause | null): string | null;
  idOf(step: Step): string;
  /** Line in the plan's own file, from 1; null for a step that comes from elsewhere. */
  lineOf(step: Step): number | null;
  /** Figures of a step by the name of their relation, in all its rounds, each subject once. */
  figuresOf(step: Step, name: string): readonly Figure[];
  /** Figures of the whole job by the name of their relation. */
  totals(name: string): readonly Figure[];
  /** Whether a word is a name of the plan: a part, a cylinder, a solvent. */
  isName(word: string): boolean;
}

/** A step that is done, not a block that holds others. */
export const isWork = (step: Step): boolean => step.word.block !== 'steps';

export function sheetOf(view: PlanView, units: Units, sources: readonly Source[]): Sheet {
  const { plan, walk, takeOff } = view;
  const entries = new Map<Step, Entry[]>();
  const byCause = new Map<Cause, Step>();
  const figures = new Map<Step, Figure[]>();
  walk.entries.forEach((entry, at) => {
    const { step } = entry.slot;
    entries.set(step, [...(entries.get(step) ?? []), entry]);
    byCause.set(entry.cause, step);
    figures.set(step, [...(figures.get(step) ?? []), ...(takeOff.steps[at] ?? [])]);
  });

  const numbers = new Map<Step, string>();
  const ids = new Map<Step, string>();
  const taken = new Set<string>();
  let count = 0;
  let blocks = 0;
  for (const step of eachStep(plan.steps)) {
    const plain = isWork(step) ? `step-${++count}` : `block-${++blocks}`;
    if (isWork(step)) numbers.set(step, String(count));
    const id = step.label !== null && !taken.has(step.label) ? step.label : plain;
    taken.add(id);
    ids.set(step, id);
  }
  const numberOf = (step: Step): string | null => {
    if (isWork(step)) return numbers.get(step) ?? null;
    for (const child of step.children) {
      const found = numberOf(child);
      if (found !== null) return found;
    }
    return null;
  };

  const names = new Set<string>([
    ...plan.graph.named.keys(),
    ...plan.scope.declarations.map((each) => each.name),
    ...(plan.bring ?? []).flatMap((item) => [item.name, ...(item.label === null ? [] : [item.label])]),
  ]);
  const lines = linesOf(plan, sources);

  return {
    view,
    plan,
    walk,
    ruler: rulerOf(plan, units),
    entriesOf: (step) => entries.get(step) ?? [],
    numberOf,
    numberOfCause: (cause) => {
      const step = cause === null ? undefined : byCause.get(cause);
      return step === undefined ? null : numberOf(step);
    },
    idOf: (step) => ids.get(step) ?? 'step',
    lineOf: (step) => (step.file === plan.file ? (lines.get(step.bound.item) ?? null) : null),
    figuresOf: (step, name) => {
      const seen = new Set<string>();
      return (figures.get(step) ?? []).filter((figure) => {
        if (figure.name !== name || seen.has(figure.subject)) return false;
        seen.add(figure.subject);
        return true;
      });
    },
    totals: (name) => takeOff.totals.filter((figure) => figure.name === name),
    isName: (word) => names.has(word),
  };
}

/** The line of each statement of the plan, found by walking the lengths of its items from where the plan stands. */
function linesOf(plan: Plan, sources: readonly Source[]): ReadonlyMap<Item, number> {
  const found = new Map<Item, number>();
  const text = sources.find((source) => source.path === plan.file)?.text;
  const { item } = plan.declaration.bound;
  const start = text?.indexOf(textOf(item)) ?? -1;
  if (text === undefined || start < 0) return found;
  const breaks: number[] = [];
  for (const match of text.matchAll(/\r\n|\r|\n/g)) breaks.push(match.index + match[0].length);
  const lineAt = (offset: number): number => {
    let low = 0;
    let high = breaks.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (breaks[middle]! <= offset) low = middle + 1;
      else high = middle;
    }
    return low + 1;
  };
  const visit = (each: Item, at: number): void => {
    const offset = each.kind === 'statement' ? ((each.label ?? each.word)?.at ?? 0) : 0;
    found.set(each, lineAt(at + offset));
    if (each.kind !== 'statement' || each.block === null) return;
    let inner = at + blockStart(each);
    for (const child of each.block.items) {
      visit(child, inner);
      inner += child.length;
    }
  };
  visit(item, start);
  return found;
}

/** What the plan charges of a refrigerant in all: the author's own mass where one step states it, else the computed sum. */
export function chargedOf(sheet: Sheet, refrigerant: string): Amount | null {
  const stated = sheet.walk.entries.flatMap((entry) => {
    if (!entry.events.some((event) => event.type === 'charges' && event.refrigerant === refrigerant)) return [];
    const mass = (entry.slot.step.values['with'] as { readonly b?: Authored } | undefined)?.b;
    return mass ? [mass] : [];
  });
  const [only] = stated;
  if (only && stated.length === 1) return sheet.ruler.authored(only);
  const figure = sheet.totals('refrigerant-in-all').find((each) => each.subject === refrigerant);
  return figure && figure.quantity?.high !== 0 ? sheet.ruler.figure(figure) : null;
}

/** The statements of a word in a step's own block. */
export const inBlock = (step: Step, word: string): readonly Bound[] =>
  step.bound.block.filter((bound) => bound.word?.word === word);
