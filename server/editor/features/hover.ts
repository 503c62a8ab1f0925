import { MarkupKind } from 'vscode-languageserver';
import { askedAt } from '../asking';
import { hoverAt } from '../hover/hover';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** What a word, a clause, a quantity or a name is; for a step its figures, for a part how it stands at that step. */
export const hover: Feature = {
  name: 'hover',
  capabilities: { hoverProvider: true },
  register(connection, session, log) {
    connection.onHover(
      guarded(log, 'hover', null, ({ textDocument, position }) => {
        const asked = askedAt(session, textDocument.uri, position);
        const found = asked && hoverAt(asked);
        if (asked === undefined || found === undefined) return null;
        return {
          contents: { kind: MarkupKind.Markdown, value: found.pages.join('\n\n---\n\n') },
          range: asked.document.lines.range(found.from, found.to),
        };
      }),
    );
  },
};
