import { syntaxFindings, wordFindings } from './faults';
import type { Finding } from './finding';
import { buildProcedure, type ProcedureOptions } from './procedure/build';
import type { Procedure } from './procedure/document';
import type { Snapshot } from './snapshot';
import type { PlanView } from './view';

/** Findings of `use` lines, which stand beside those of the text and of the plans. */
const ofUses: ReadonlySet<string> = new Set(['unusable-path', 'circular-use', 'missing-file']);

/**
 * The sheet of a plan with all that stands behind it: the content hash covers every file that it draws in, and an error
 * in any of them bars it, since a line that was not understood may be a step that is missing from the sheet.
 */
export function printable(
  snapshot: Pick<Snapshot, 'closure' | 'file' | 'findings'>,
  view: PlanView,
  options: Omit<ProcedureOptions, 'sources'>,
): Procedure {
  const files = snapshot.closure(view.plan.file);
  const sources = files.map(({ path }) => ({ path, text: snapshot.file(path)?.text ?? '' }));
  const findings: readonly Finding[] = [
    ...view.findings,
    ...files.flatMap(({ path, tree, statements }) => [
      ...syntaxFindings(tree, path),
      ...wordFindings(statements, path),
      ...snapshot.findings(path).filter(({ name }) => ofUses.has(name)),
    ]),
  ];
  const errors = findings.filter(({ severity }) => severity === 'error').length;
  return { ...buildProcedure(view, { ...options, sources }), draft: errors > 0 ? { errors } : null };
}
