import type { Range, TextEdit } from 'vscode-languageserver';
import { format } from '../../../grammar';
import type { Session } from '../session';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** Lays a file out, or the lines of a selection, or the block that a brace closes. */
export const formatting: Feature = {
  name: 'formatting',
  capabilities: {
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '}' },
  },
  register(connection, session, log) {
    connection.onDocumentFormatting(
      guarded(log, 'formatting', null, ({ textDocument }) => edits(session, textDocument.uri)),
    );
    connection.onDocumentRangeFormatting(
      guarded(log, 'range formatting', null, ({ textDocument, range }) => edits(session, textDocument.uri, range)),
    );
    connection.onDocumentOnTypeFormatting(
      guarded(log, 'formatting while typing', null, ({ textDocument, position: { line } }) =>
        edits(session, textDocument.uri, { start: { line, character: 0 }, end: { line: line + 1, character: 0 } }),
      ),
    );
  },
};

function edits(session: Session, uri: string, within?: Range): TextEdit[] | null {
  const view = session.view(uri);
  if (view === undefined) return null;
  const { lines } = view.document;
  return format(view.file.tree)
    .map(({ from, to, text }) => ({ range: lines.range(from, to), newText: text }))
    .filter(
      ({ range }) =>
        within === undefined ||
        (range.start.line >= Math.max(0, within.start.line - 1) &&
          range.end.line <= within.end.line &&
          !endsBefore(range, within)),
    );
}

/** An edit of the line break before the first line belongs to that line, one that ends before it does not. */
const endsBefore = (edit: Range, within: Range): boolean => edit.end.line < within.start.line;
