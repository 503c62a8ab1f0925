import type { SemanticTokens, SemanticTokensEdit } from 'vscode-languageserver';
import { boundView } from '../asking';
import { piecesOf, tokenModifiers, tokenTypes } from '../highlight/tokens';
import { forEachPlacedIn } from '../placed';
import type { Session } from '../session';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** Answers that are kept, so that the next one can be given as the difference to it. */
const mostKept = 24;

/** Colours by meaning: words, verbs, parts, clauses, choices, names and labels. */
export const semanticTokens: Feature = {
  name: 'semantic tokens',
  capabilities: {
    semanticTokensProvider: {
      legend: { tokenTypes: [...tokenTypes], tokenModifiers: [...tokenModifiers] },
      range: true,
      full: { delta: true },
    },
  },
  register(connection, session, log) {
    const kept = new Map<string, { readonly id: string; readonly data: number[] }>();
    let count = 0;
    const keep = (uri: string, data: number[]): SemanticTokens => {
      const resultId = String(++count);
      kept.delete(uri);
      kept.set(uri, { id: resultId, data });
      const [oldest] = kept.keys();
      if (kept.size > mostKept && oldest !== undefined) kept.delete(oldest);
      return { resultId, data };
    };
    const { semanticTokens: tokens } = connection.languages;
    tokens.on(
      guarded(log, 'semantic tokens', { data: [] }, ({ textDocument: { uri } }) => keep(uri, encode(session, uri))),
    );
    tokens.onRange(
      guarded(log, 'semantic tokens of a range', { data: [] }, ({ textDocument: { uri }, range }) => {
        const document = session.view(uri)?.document;
        if (document === undefined) return { data: [] };
        const from = document.offsetAt(range.start);
        return { data: encode(session, uri, from, document.offsetAt(range.end)) };
      }),
    );
    tokens.onDelta(
      guarded<
        [{ textDocument: { uri: string }; previousResultId: string }],
        SemanticTokens | { resultId?: string; edits: SemanticTokensEdit[] }
      >(log, 'semantic tokens that changed', { data: [] }, ({ textDocument: { uri }, previousResultId }) => {
        const before = kept.get(uri);
        const now = keep(uri, encode(session, uri));
        if (before?.id !== previousResultId) return now;
        return { resultId: now.resultId!, edits: difference(before.data, now.data) };
      }),
    );
  },
};

/** The protocol's five numbers a piece: lines and characters from the piece before, length, type, modifiers. */
function encode(session: Session, uri: string, from = 0, to = Number.MAX_SAFE_INTEGER): number[] {
  const view = boundView(session, uri);
  if (view === undefined) return [];
  const { lines } = view.document;
  const data: number[] = [];
  let line = 0;
  let character = 0;
  forEachPlacedIn(view.bound, from, to, (bound, at) => {
    const pieces = piecesOf(bound);
    const [first] = pieces;
    if (first === undefined) return;
    // A statement's own line is one line of the text: one look-up serves all its pieces.
    const start = lines.positionAt(at + first.at);
    for (const piece of pieces) {
      const own = start.character + piece.at - first.at;
      data.push(
        start.line - line,
        start.line === line ? own - character : own,
        piece.length,
        piece.type,
        piece.modifiers,
      );
      line = start.line;
      character = own;
    }
  });
  return data;
}

/** One edit that makes `after` of `before`: what is the same at both ends stays. */
function difference(before: readonly number[], after: readonly number[]): SemanticTokensEdit[] {
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start += 1;
  let end = 0;
  while (end < most - start && before[before.length - 1 - end] === after[after.length - 1 - end]) end += 1;
  if (start === before.length && start === after.length) return [];
  return [{ start, deleteCount: before.length - start - end, data: after.slice(start, after.length - end) }];
}
