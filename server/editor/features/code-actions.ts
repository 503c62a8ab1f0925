import { type CodeAction, CodeActionKind, type Range, type TextEdit } from 'vscode-languageserver';
import type { Fix } from '../../engine/finding';
import { diagnosticsOf, rangeOf } from '../diagnostics';
import type { View } from '../session';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** The ways out that findings name. Safe ones may be applied all at once; whatever changes the work is chosen by hand. */
export const codeActions: Feature = {
  name: 'code actions',
  capabilities: { codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.SourceFixAll] } },
  register(connection, session, log) {
    connection.onCodeAction(
      guarded(log, 'code actions', null, ({ textDocument, range, context }) => {
        const view = session.view(textDocument.uri);
        if (view === undefined) return null;
        const wants = (kind: string): boolean =>
          context.only === undefined || context.only.some((each) => kind === each || kind.startsWith(`${each}.`));
        const { folder, snapshot, path } = view;
        const actions: CodeAction[] = [];
        const findings = snapshot.findings(path).filter((finding) => finding.fixes.length > 0);
        if (wants(CodeActionKind.QuickFix)) {
          for (const finding of findings) {
            const place = rangeOf(folder, snapshot, finding.at);
            if (place === undefined || !touch(place, range)) continue;
            finding.fixes.forEach((fix, index) => {
              const changes = changesOf(view, [fix]);
              if (changes === undefined) return;
              actions.push({
                title: fix.title,
                kind: CodeActionKind.QuickFix,
                diagnostics: diagnosticsOf(folder, snapshot, [finding]),
                edit: { changes },
                ...(index === 0 ? { isPreferred: true } : {}),
              });
            });
          }
        }
        // Fixing all is only offered where it is asked for, and takes the safe ones alone.
        if (context.only !== undefined && wants(CodeActionKind.SourceFixAll)) {
          const changes = changesOf(
            view,
            findings.flatMap((finding) => finding.fixes.filter((fix) => fix.safe).slice(0, 1)),
          );
          if (changes !== undefined)
            actions.push({
              title: 'Mend all that can be mended safely',
              kind: CodeActionKind.SourceFixAll,
              edit: { changes },
            });
        }
        return actions;
      }),
    );
  },
};

const touch = (a: Range, b: Range): boolean => !(after(a.start, b.end) || after(b.start, a.end));
const after = (a: Range['start'], b: Range['start']): boolean =>
  a.line > b.line || (a.line === b.line && a.character > b.character);

/** The edits of some fixes by file; a fix that meets the place of one before it is left for the next time. */
function changesOf({ folder, snapshot }: View, fixes: readonly Fix[]): Record<string, TextEdit[]> | undefined {
  const changes: Record<string, TextEdit[]> = {};
  for (const fix of fixes) {
    const edits = fix.edits.map(({ at, text }) => ({
      uri: folder.uriOf(at.file),
      range: rangeOf(folder, snapshot, at),
      newText: text,
    }));
    if (edits.some(({ uri, range }) => range === undefined || changes[uri]?.some((each) => touch(each.range, range))))
      continue;
    for (const { uri, range, newText } of edits) (changes[uri] ??= []).push({ range: range!, newText });
  }
  return Object.keys(changes).length > 0 ? changes : undefined;
}
