import type { Finding } from '../finding';
import type { Bound } from '../plan/bind';
import type { Declaration } from '../plan/scope';
import type { PlanView } from '../view';
import { vocabulary } from '../vocabulary';
import { checks } from './all';

const answerWord = vocabulary.named.get('record');

/** All findings of a record, held against the plan that it is of. */
export function checkRecord(declaration: Declaration, view: PlanView | null): readonly Finding[] {
  const found: Finding[] = [];
  const answers = new Map<string, Bound>();
  for (const bound of declaration.bound.block) {
    const label = bound.item.word?.text;
    if (bound.word === answerWord && label !== undefined && !answers.has(label)) answers.set(label, bound);
  }
  for (const each of checks)
    each.record?.({
      declaration,
      view,
      answers,
      report: (bound, span, report) =>
        found.push({
          name: each.name,
          severity: report.severity ?? each.severity,
          message: report.message,
          at: { file: declaration.file, item: bound.item, from: span.from, to: span.to },
          related: report.related ?? [],
          fixes: report.fixes ?? [],
        }),
    });
  return found;
}
