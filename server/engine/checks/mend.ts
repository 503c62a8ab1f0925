import type { Statement, Token } from '../../../grammar/tree';
import type { Edit } from '../finding';
import type { Plan } from '../plan/plan';
import type { Step } from '../plan/step';
import type { Mend } from './define';

/**
 * Makes edits at steps of the plan. A step that comes from a standard is not edited there: a job departs from its standard
 * in its own file, so no edit is offered for it.
 */
export function mendIn(plan: Plan): Mend {
  const own = (step: Step): boolean => step.file === plan.file;
  const at = (step: Step, from: number, to: number, text: string): Edit => ({
    at: { file: step.file, item: step.bound.item, from, to },
    text,
  });
  return {
    insertBefore(step, ...lines) {
      if (!own(step)) return null;
      const start = contentStart(step.bound.item);
      const then = `${newline(step.bound.item)}${indent(step.bound.item)}`;
      return at(step, start, start, lines.map((line) => `${line}${then}`).join(''));
    },
    insertAfter(step, ...lines) {
      if (!own(step)) return null;
      const end = contentEnd(step.bound.item);
      const then = `${newline(step.bound.item)}${indent(step.bound.item)}`;
      return at(step, end, end, lines.map((line) => `${then}${line}`).join(''));
    },
    remove: (step) => (own(step) ? at(step, 0, step.bound.item.length, '') : null),
    replace(step, slot, text) {
      const span = step.spans[slot];
      return span && own(step) && step.values === step.bound.values ? at(step, span.from, span.to, text) : null;
    },
    write: (step, from, to, text) => (own(step) ? [at(step, from, to, text)] : []),
    append(step, text) {
      if (!own(step)) return null;
      const last = [...step.bound.item.head].reverse().find((token) => !isSpare(token));
      if (!last) return null;
      const end = last.at + last.text.length;
      return at(step, end, end, text);
    },
  };
}

const isSpare = (token: Token): boolean =>
  token.kind === 'space' || token.kind === 'newline' || token.kind === 'comment' || token.kind === 'open';

const contentStart = (item: Statement): number => (item.label ?? item.word ?? item.head[0])?.at ?? 0;
const indent = (item: Statement): string => (item.head[0]?.kind === 'space' ? item.head[0].text : '');
const newline = (item: Statement): string =>
  [...item.head, ...item.tail].find((token) => token.kind === 'newline')?.text ?? '\n';

/** Where a statement's text ends, before its newline. */
function contentEnd(item: Statement): number {
  const last = (item.block ? item.tail : item.head).at(-1);
  return last?.kind === 'newline' ? item.length - last.text.length : item.length;
}
