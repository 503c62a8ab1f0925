import { SymbolKind, type WorkspaceSymbol } from 'vscode-languageserver';
import { locationOf } from '../locations';
import { type Definition, declarationPlace, labelsOf, partsOf } from '../names';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** Answers beyond this number are left out; the client asks again as more is typed. */
const mostSymbols = 400;

/** Plans, standards, materials, labelled steps and parts of all files. */
export const workspaceSymbols: Feature = {
  name: 'workspace symbols',
  capabilities: { workspaceSymbolProvider: true },
  register(connection, session, log) {
    connection.onWorkspaceSymbol(
      guarded(log, 'workspace symbols', null, ({ query }) => {
        const found: WorkspaceSymbol[] = [];
        for (const folder of session.folders) {
          const { snapshot } = folder;
          const add = (each: Definition, kind: SymbolKind, container: string): void => {
            if (found.length >= mostSymbols || !matches(query, each.text)) return;
            const location = locationOf(folder, snapshot, each);
            if (location) found.push({ name: each.text, kind, location, containerName: container });
          };
          const files = snapshot.paths.flatMap((path) => snapshot.bound(path) ?? []);
          for (const { declarations, path } of files)
            for (const each of declarations) add(declarationPlace(each), SymbolKind.Module, each.title ?? path);
          // Without a query the list is of declarations; their insides come as something is typed.
          if (query === '') continue;
          for (const { declarations, path } of files) {
            for (const { bound, kind, name } of declarations) {
              if (kind !== 'plan' && kind !== 'standard') continue;
              for (const each of [...labelsOf(bound, path).values()].flat()) add(each, SymbolKind.Method, name);
              for (const each of [...partsOf(bound, path).values()].flat()) add(each, SymbolKind.Field, name);
            }
          }
        }
        return found;
      }),
    );
  },
};

/** Whether the letters of a query stand in a name in their order. */
function matches(query: string, name: string): boolean {
  let at = 0;
  const wanted = query.toLowerCase();
  for (const letter of name.toLowerCase()) if (letter === wanted[at]) at += 1;
  return at >= wanted.length;
}
