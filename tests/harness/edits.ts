import { blockEdits } from './crew-edits';
import { crewHeadEdits } from './crew-head-edits';
import { crewWordEdits } from './crew-word-edits';
import { headEdits } from './head-edits';
import type { EditSet, LineEdit } from './scene';
import { clauseEdits, type Made, orderEdits, stepsOf } from './step-edits';

/** Every edit that the operators make of a file that a plan stands in or follows, always in the same order. */
export function* editsOf(plan: string, file: string, source: string, set: EditSet = 'first'): Generator<LineEdit> {
  const lines = source.split('\n');
  const steps = stepsOf(lines);
  const of = (made: Made): LineEdit => ({
    operator: plan === file ? made.operator : `standard: ${made.operator}`,
    file,
    plan,
    what: `${made.was.trim()} => ${made.now.trim() || 'nothing'}`,
    text: made.lines.join('\n'),
    touched: made.touched,
    at: made.at,
    steps,
    past: made.past ?? [],
    group: made.group ?? null,
    set,
    was: made.was,
    now: made.now,
    source,
    figure: made.figure ?? null,
  });
  const every =
    set === 'new'
      ? [
          ...blockEdits(lines, steps),
          ...crewWordEdits(lines, steps),
          ...(plan === file ? crewHeadEdits(lines, steps) : []),
        ]
      : [...orderEdits(lines, steps), ...clauseEdits(lines, steps), ...(plan === file ? headEdits(lines, steps) : [])];
  for (const made of every) yield of(made);
}
