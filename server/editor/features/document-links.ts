import type { DocumentLink } from 'vscode-languageserver';
import { boundView } from '../asking';
import { rangeOf } from '../diagnostics';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** The path of a `use` leads to its file. */
export const documentLinks: Feature = {
  name: 'document links',
  capabilities: { documentLinkProvider: {} },
  register(connection, session, log) {
    connection.onDocumentLinks(
      guarded(log, 'document links', null, ({ textDocument }) => {
        const view = boundView(session, textDocument.uri);
        if (view === undefined) return null;
        const { folder, snapshot, path, bound } = view;
        return bound.uses.flatMap((use): DocumentLink[] => {
          if (!('path' in use.lead) || !snapshot.file(use.lead.path)) return [];
          const range = rangeOf(folder, snapshot, {
            file: path,
            item: use.bound.item,
            from: use.from + 1,
            to: use.to - 1,
          });
          return range ? [{ range, target: folder.uriOf(use.lead.path) }] : [];
        });
      }),
    );
  },
};
