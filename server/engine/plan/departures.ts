import type { Token } from '../../../grammar/tree';
import type { Bound } from './bind';
import { faultFinding, type Gather, wordSpan } from './gather';
import { backwardRounds, readTerms } from './read-terms';
import { adapt, type Departure, eachStep, type Step, stepsOf } from './step';
import type { Name } from './term';
import type { Form, Vocabulary } from './vocabulary';

const departures = new Set(['change', 'skip', 'replace', 'before', 'after']);

/** Applies a job's departures to its standard's steps, in the order in which the job states them. */
export function depart(
  steps: readonly Step[],
  block: readonly Bound[],
  file: string,
  vocabulary: Vocabulary,
  gather: Gather,
): { steps: readonly Step[]; departures: readonly Departure[] } {
  const departing = block.filter((bound) => bound.word && departures.has(bound.word.word));
  if (departing.length === 0) return { steps, departures: [] };
  const labels = labelsOf(steps);
  const made: Departure[] = [];
  let result = steps;
  for (const bound of departing) {
    const label = bound.values['label'] as Name | undefined;
    if (!label) continue;
    const kind = bound.word?.word as Departure['kind'];
    const target = labels.get(label.text);
    const departure: Departure = {
      kind,
      label: label.text,
      reason: (bound.values['because'] as string | undefined) ?? null,
      bound,
      file,
      of: target ?? null,
    };
    made.push(departure);
    if (!target) {
      gather.unknownName('labelled step', label.text, bound, { from: label.from, to: label.to }, labels.keys());
      continue;
    }
    const added =
      kind === 'change' || kind === 'skip' ? [] : stepsOf(bound.block, file).map((step) => mark(step, departure));
    result = replaceIn(result, label.text, bound, (step) => {
      switch (kind) {
        case 'change':
          return [changed(step, departure, vocabulary, gather)];
        case 'skip':
          return [];
        case 'replace':
          return added;
        case 'before':
          return [...added, step];
        case 'after':
          return [step, ...added];
      }
    });
  }
  return { steps: result, departures: made };
}

const labelled = new WeakMap<readonly Step[], ReadonlyMap<string, Step>>();

/** The labelled steps of a list, found once a list: every job that departs from a standard asks for them. */
function labelsOf(steps: readonly Step[]): ReadonlyMap<string, Step> {
  let known = labelled.get(steps);
  if (!known) {
    const found = new Map<string, Step>();
    for (const step of eachStep(steps)) if (step.label) found.set(step.label, step);
    labelled.set(steps, (known = found));
  }
  return known;
}

const mark = (step: Step, departure: Departure): Step =>
  adapt(step, departure.bound, () => ({
    ...step,
    departure,
    children: step.children.map((each) => mark(each, departure)),
  }));

/**
 * Rebuilds only the way down to the labelled step; everything else keeps its identity, and so does what was rebuilt for the
 * same departure before.
 */
function replaceIn(
  steps: readonly Step[],
  label: string,
  departing: Bound,
  by: (step: Step) => readonly Step[],
): readonly Step[] {
  let touched = false;
  const result = steps.flatMap((step): readonly Step[] => {
    if (step.label === label) {
      touched = true;
      return by(step);
    }
    if (step.children.length === 0) return [step];
    const children = replaceIn(step.children, label, departing, by);
    if (children === step.children) return [step];
    touched = true;
    return [holding(step, departing, children)];
  });
  return touched ? result : steps;
}

const rebuilt = new WeakMap<Step, WeakMap<Bound, Step>>();

/** A block with other steps in it; the same object while block, departure and steps are the same. */
function holding(step: Step, departing: Bound, children: readonly Step[]): Step {
  let known = rebuilt.get(step);
  if (!known) rebuilt.set(step, (known = new WeakMap()));
  const before = known.get(departing);
  if (before && before.children.length === children.length && before.children.every((each, k) => each === children[k]))
    return before;
  const made = { ...step, children };
  known.set(departing, made);
  return made;
}

/** A step with its clauses changed: each statement of the block is read as the step itself would read it. */
function changed(step: Step, departure: Departure, vocabulary: Vocabulary, gather: Gather): Step {
  const values: Record<string, unknown> = {};
  for (const bound of departure.bound.block) {
    const { item } = bound;
    if (!item.word) continue;
    const tokens: readonly Token[] = [item.word, ...item.terms];
    const whole = { from: item.word.at, to: item.word.at + item.word.text.length };
    const read = readTerms(step.word.form as Form, vocabulary.common, tokens, whole, true);
    for (const fault of read.faults) gather.findings.push(faultFinding(fault, bound, departure.file));
    Object.assign(values, read.values);
  }
  const backward = backwardRounds({ ...step.values, ...values }, wordSpan(departure.bound));
  if (backward) gather.findings.push(faultFinding(backward, departure.bound, departure.file));
  return adapt(step, departure.bound, () => ({ ...step, values: { ...step.values, ...values }, departure }));
}
