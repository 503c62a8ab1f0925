import type { Location } from 'vscode-languageserver';
import { askedAt } from '../asking';
import { locationOf } from '../locations';
import { sameDefinition } from '../names';
import { symbolAt } from '../symbol-at';
import { guarded } from '../turns';
import { placesOfName } from '../uses-of-name';
import type { Feature } from './feature';

/** Every place of the folder that speaks of a name, records and following jobs included. */
export const references: Feature = {
  name: 'references',
  capabilities: { referencesProvider: true },
  register(connection, session, log) {
    connection.onReferences(
      guarded(log, 'references', null, ({ textDocument, position, context }) => {
        const asked = askedAt(session, textDocument.uri, position);
        const [wanted] = (asked && symbolAt(asked)?.definitions) ?? [];
        if (asked === undefined || wanted === undefined) return null;
        const { folder, snapshot } = asked;
        return placesOfName(snapshot, snapshot.paths, wanted)
          .filter(
            ({ bound, file, mention }) =>
              context.includeDeclaration || !sameDefinition({ ...wanted, bound, file, from: mention.from }, wanted),
          )
          .map(({ file, bound, mention }) =>
            locationOf(folder, snapshot, { file, bound, from: mention.from, to: mention.to }),
          )
          .filter((each): each is Location => each !== undefined);
      }),
    );
  },
};
