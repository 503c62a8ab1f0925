import { type DocumentHighlight, DocumentHighlightKind } from 'vscode-languageserver';
import { askedAt } from '../asking';
import { locationOf } from '../locations';
import { symbolAt } from '../symbol-at';
import { guarded } from '../turns';
import { placesOfName } from '../uses-of-name';
import type { Feature } from './feature';

/** The other places of this file that speak of the name at the cursor. */
export const highlight: Feature = {
  name: 'document highlight',
  capabilities: { documentHighlightProvider: true },
  register(connection, session, log) {
    connection.onDocumentHighlight(
      guarded(log, 'highlight', null, ({ textDocument, position }) => {
        const asked = askedAt(session, textDocument.uri, position);
        const [wanted] = (asked && symbolAt(asked)?.definitions) ?? [];
        if (asked === undefined || wanted === undefined) return null;
        const { folder, snapshot, path } = asked;
        return placesOfName(snapshot, [path], wanted).flatMap(({ file, bound, mention }): DocumentHighlight[] => {
          const location = locationOf(folder, snapshot, { file, bound, from: mention.from, to: mention.to });
          if (location === undefined) return [];
          return [
            {
              range: location.range,
              kind: mention.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
            },
          ];
        });
      }),
    );
  },
};
