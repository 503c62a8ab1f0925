import type { Location } from 'vscode-languageserver';
import { askedAt } from '../asking';
import { locationOf } from '../locations';
import { symbolAt } from '../symbol-at';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** From a name to where it is made, across files; from a `use` to the file. */
export const definition: Feature = {
  name: 'definition',
  capabilities: { definitionProvider: true },
  register(connection, session, log) {
    connection.onDefinition(
      guarded(log, 'definition', null, ({ textDocument, position }) => {
        const asked = askedAt(session, textDocument.uri, position);
        if (asked === undefined) return null;
        const { folder, snapshot, look, bound } = asked;
        const use = bound.uses.find((each) => each.bound === look.bound?.bound);
        if (use && 'path' in use.lead && snapshot.file(use.lead.path)) {
          const start = { line: 0, character: 0 };
          return [{ uri: folder.uriOf(use.lead.path), range: { start, end: start } }];
        }
        return (symbolAt(asked)?.definitions ?? [])
          .map((each) => locationOf(folder, snapshot, each))
          .filter((each): each is Location => each !== undefined);
      }),
    );
  },
};
