import { type CompletionItem, CompletionItemKind, InsertTextFormat, MarkupKind } from 'vscode-languageserver';
import { boundView } from '../asking';
import { complete } from '../completion/complete';
import type { Proposal } from '../completion/proposal';
import { guarded } from '../turns';
import type { Feature } from './feature';

const kinds: Record<Proposal['kind'], CompletionItemKind> = {
  word: CompletionItemKind.Keyword,
  verb: CompletionItemKind.Function,
  'part-kind': CompletionItemKind.Class,
  clause: CompletionItemKind.Property,
  choice: CompletionItemKind.EnumMember,
  name: CompletionItemKind.Variable,
  unit: CompletionItemKind.Unit,
  value: CompletionItemKind.Value,
  path: CompletionItemKind.File,
};

/** Words, clauses, choices, names, units and paths that may stand at the cursor, with what they mean. */
export const completion: Feature = {
  name: 'completion',
  capabilities: { completionProvider: { triggerCharacters: [' ', '"', '/'] } },
  register(connection, session, log) {
    connection.onCompletion(
      guarded(log, 'completion', null, ({ textDocument, position }) => {
        const view = boundView(session, textDocument.uri);
        if (view === undefined) return null;
        const { document, snapshot, path, bound } = view;
        const offset = document.offsetAt(position);
        const snippets = session.client.textDocument?.completion?.completionItem?.snippetSupport === true;
        const typed = /[\p{L}\p{N}\p{M}_-]*$/u.exec(document.text.slice(Math.max(0, offset - 80), offset))?.[0] ?? '';
        const begins = offset - (/^\p{L}/u.test(typed) ? typed.length : 0);
        return complete(snapshot, path, bound, document.text, offset).map((proposal): CompletionItem => {
          const range = document.lines.range(proposal.from ?? begins, offset);
          const newText = (snippets ? proposal.snippet : undefined) ?? proposal.plain ?? proposal.label;
          const hasPlaces = snippets && proposal.snippet !== undefined;
          return {
            label: proposal.label,
            kind: kinds[proposal.kind],
            sortText: String(Math.round(proposal.rank * 100)).padStart(6, '0'),
            textEdit: { range, newText },
            ...(hasPlaces ? { insertTextFormat: InsertTextFormat.Snippet } : {}),
            ...(proposal.filter === undefined ? {} : { filterText: proposal.filter }),
            ...(proposal.detail ? { labelDetails: { description: short(proposal.detail) } } : {}),
            ...(proposal.page === undefined
              ? {}
              : { documentation: { kind: MarkupKind.Markdown, value: proposal.page } }),
          };
        });
      }),
    );
  },
};

/** Characters of a detail that a list shows beside a name. */
const mostDetail = 48;
const short = (detail: string): string =>
  detail.length <= mostDetail ? detail : `${detail.slice(0, mostDetail - 1)}…`;
