import type { Bound } from '../../engine/plan/bind';
import { figuresOfRecord } from '../../engine/takeoff/of-record';
import type { Asked } from '../asking';
import { figureLines, figurePage } from './figure';

/** What a record comes to: all of it at its head, at an answer what that answer's readings mean. */
export function recordPages(asked: Asked, bound: Bound): readonly string[] {
  const top = asked.look.chain[0]?.bound;
  if (top?.word?.word !== 'record') return [];
  const { view, declaration } = asked.snapshot.records(asked.path).find((each) => each.declaration.bound === top) ?? {};
  if (!view || !declaration) return [];
  const { atmosphere } = view.plan.site;
  const found = figuresOfRecord(declaration, view);
  if (bound === top) {
    const figures = found.map(({ figure }) => figure);
    const notes = figures.flatMap((figure) => figure.notes.filter((note) => !figure.defaults.includes(note)));
    return figures.length > 0
      ? [[figureLines(figures, atmosphere), [...new Set(notes)].map((note) => `- ${note}`).join('\n')].join('\n\n')]
      : [];
  }
  const answer = asked.look.chain[1]?.bound;
  const own = found.filter((each) => each.answer !== null && each.answer === answer);
  return own.length > 0 ? [own.map(({ figure }) => figurePage(figure, atmosphere)).join('\n\n')] : [];
}
