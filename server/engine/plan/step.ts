import type { Bound } from './bind';
import type { Span } from './read-terms';
import type { Word } from './vocabulary';

/** A step of a plan as it will be done: a statement of the plan or its standard, with the job's departures applied. */
export interface Step {
  /** The first line as written. */
  readonly text: string;
  readonly bound: Bound;
  readonly word: Word;
  readonly label: string | null;
  readonly values: Readonly<Record<string, unknown>>;
  readonly spans: Readonly<Record<string, Span>>;
  /** File that the statement stands in. */
  readonly file: string;
  /** The departure that brought it in or changed it. */
  readonly departure: Departure | null;
  readonly children: readonly Step[];
}

/** How a job departs from its standard. */
export interface Departure {
  readonly kind: 'change' | 'skip' | 'replace' | 'before' | 'after';
  readonly label: string;
  readonly reason: string | null;
  readonly bound: Bound;
  readonly file: string;
  /** The standard's own step, for `change`, `skip` and `replace`: what it was before. */
  readonly of: Step | null;
}

/** The first line of a statement as written, without comment and brace. */
export function firstLine(bound: Bound): string {
  let text = '';
  for (const token of bound.item.head) {
    if (token.kind === 'comment' || token.kind === 'open' || token.kind === 'newline') break;
    text += token.kind === 'space' ? ' ' : token.text;
  }
  return text.trim();
}

const plain = new WeakMap<Bound, Step>();

/** The step of a bound statement; the same object for the same statement, so that what was walked can be kept. */
export function stepOf(bound: Bound, file: string): Step | null {
  if (!bound.word) return null;
  const known = plain.get(bound);
  if (known && known.file === file) return known;
  const step: Step = {
    bound,
    word: bound.word,
    label: bound.label?.text ?? null,
    values: bound.values,
    spans: bound.spans,
    file,
    departure: null,
    text: firstLine(bound),
    children: stepsOf(bound.block, file),
  };
  plain.set(bound, step);
  return step;
}

const listed = new WeakMap<readonly Bound[], { readonly file: string; readonly steps: readonly Step[] }>();

/** The steps of a block; the same list for the same block, which all the jobs that follow a standard share. */
export function stepsOf(block: readonly Bound[], file: string): readonly Step[] {
  const known = listed.get(block);
  if (known && known.file === file) return known.steps;
  const steps: Step[] = [];
  for (const bound of block) {
    const step = bound.word && isStep(bound.word) ? stepOf(bound, file) : null;
    if (step) steps.push(step);
  }
  listed.set(block, { file, steps });
  return steps;
}

/** Notes, cautions, limits and the like stand in a step's block but are no steps. */
export const isStep = (word: Word): boolean => 'verb' in word;

/** Whether a step says something in a slot that cannot be read: it has its finding, and is not also missing. */
export const isUnread = (step: Step, slot: string): boolean => slot in step.spans && !(slot in step.values);

/** All steps of a tree in order, blocks before what is in them. */
export function* eachStep(steps: readonly Step[]): Generator<Step> {
  for (const step of steps) {
    yield step;
    yield* eachStep(step.children);
  }
}

const adapted = new WeakMap<Step, WeakMap<Bound, Step>>();

/** A step with a departure laid on it; remembered by both, so that its identity holds while neither changes. */
export function adapt(step: Step, by: Bound, make: () => Step): Step {
  let known = adapted.get(step);
  if (!known) adapted.set(step, (known = new WeakMap()));
  let result = known.get(by);
  if (!result) known.set(by, (result = make()));
  return result;
}
