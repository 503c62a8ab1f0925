import { textOf } from '../../../grammar/print';
import type { Statement, Token } from '../../../grammar/tree';
import type { Edit } from '../finding';
import type { Step } from '../plan/step';
import type { PlanView } from '../view';
import type { Mend } from './define';

/**
 * Makes edits at steps of the plan. A step that comes from a standard is not edited there: a job departs from its standard
 * in its own file, so no edit is offered for it.
 */
export function mendIn(view: PlanView): Mend {
  const { plan } = view;
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
      const end = lineEnd(step.bound.item);
      return end === null ? null : at(step, end, end, text);
    },
    move(step, to, other, as = (text) => text) {
      if (step === other || !own(step) || !own(other)) return [];
      const { item } = step.bound;
      const text = textOf(item).slice(contentStart(item), contentEnd(item));
      const lines = as(text)
        .split(/\r\n|\n|\r/)
        .map((line) => (line.startsWith(indent(item)) ? line.slice(indent(item).length) : line));
      const put = to === 'before' ? this.insertBefore(other, ...lines) : this.insertAfter(other, ...lines);
      return put ? [at(step, 0, item.length, ''), put] : [];
    },
    change: (bound, span, text) => ({ at: { file: plan.file, item: bound.item, ...span }, text }),
    addTo(bound, ...lines) {
      const { item } = bound;
      const then = `${newline(item)}${indent(item)}`;
      const text = lines.map((line) => `${then}  ${line}`).join('');
      const put = (from: number, by: string): Edit => ({ at: { file: plan.file, item, from, to: from }, text: by });
      if (!item.block) return put(lineEnd(item) ?? 0, ` {${text}${then}}`);
      const end = blockEnd(item);
      const closing = textOf(item)
        .slice(0, end)
        .search(/[ \t]*\}$/);
      const alone = closing >= 0 && /[\r\n]$/.test(textOf(item).slice(0, closing));
      // Before the line of the closing brace, so that a comment behind the last line stays where it is.
      return alone
        ? put(closing, lines.map((line) => `${indent(item)}  ${line}${newline(item)}`).join(''))
        : put(end - 1, `${text}${then}`);
    },
    view,
  };
}

/** Where a statement's block ends, its brace included. */
const blockEnd = (item: Statement): number =>
  item.head.reduce((sum, token) => sum + token.text.length, 0) + (item.block?.length ?? 0);

/** Where the words of a statement's first line end, before its brace and its comment. */
function lineEnd(item: Statement): number | null {
  const last = [...item.head].reverse().find((token) => !isSpare(token));
  return last ? last.at + last.text.length : null;
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
