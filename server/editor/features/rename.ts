import { ErrorCodes, ResponseError, type TextEdit } from 'vscode-languageserver';
import type { Asked } from '../asking';
import { askedAt } from '../asking';
import { locationOf } from '../locations';
import { type Definition, labelsOf, partsOf, scopeOf, stockOf } from '../names';
import { symbolAt } from '../symbol-at';
import { guarded } from '../turns';
import { placesOfName } from '../uses-of-name';
import type { Feature } from './feature';

/** A name as the grammar reads one. */
const name = /^\p{L}(?:[\p{L}\p{N}\p{M}_]|-(?!>))*$/u;

/** Gives a label, a part or a declared thing another name, wherever it is spoken of. */
export const rename: Feature = {
  name: 'rename',
  capabilities: { renameProvider: { prepareProvider: true } },
  register(connection, session, log) {
    connection.onPrepareRename(
      guarded(log, 'prepare rename', null, ({ textDocument, position }) => {
        const asked = askedAt(session, textDocument.uri, position);
        const found = asked && symbolAt(asked);
        const wanted = found && only(found.definitions);
        if (asked === undefined || found === undefined || wanted === undefined || found.mention.text !== wanted.text)
          return null;
        const { from, to, text } = found.mention;
        return { range: asked.document.lines.range(found.at + from, found.at + to), placeholder: text };
      }),
    );
    connection.onRenameRequest(
      guarded(log, 'rename', null, ({ textDocument, position, newName }) => {
        const asked = askedAt(session, textDocument.uri, position);
        const wanted = asked && only(symbolAt(asked)?.definitions ?? []);
        if (asked === undefined || wanted === undefined) return null;
        const wrong = objection(asked, wanted, newName);
        if (wrong !== undefined) return new ResponseError(ErrorCodes.InvalidParams, wrong) as never;
        const { folder, snapshot } = asked;
        const changes: Record<string, TextEdit[]> = {};
        for (const { file, bound, mention } of placesOfName(snapshot, snapshot.paths, wanted)) {
          const location = locationOf(folder, snapshot, { file, bound, from: mention.from, to: mention.to });
          if (location === undefined) continue;
          (changes[location.uri] ??= []).push({ range: location.range, newText: newName });
        }
        return { changes };
      }),
    );
  },
};

/** The one definition that has a name of its own; a kind that several parts share has none. */
const only = (definitions: readonly Definition[]): Definition | undefined =>
  definitions[0]?.named === true && definitions[0].kind !== 'parameter' ? definitions[0] : undefined;

/** Why a thing cannot be called so. */
function objection({ snapshot, path, look }: Asked, wanted: Definition, newName: string): string | undefined {
  if (!name.test(newName)) return 'A name begins with a letter and holds letters, digits, "-" and "_".';
  if (newName === wanted.text) return undefined;
  const top =
    wanted.file === path
      ? look.chain[0]?.bound
      : snapshot.bound(wanted.file)?.statements.find((each) => holds(each, wanted));
  const taken =
    wanted.kind === 'declaration'
      ? wanted.bound.word !== null && scopeOf(snapshot, wanted.file).find(wanted.bound.word.word, newName) !== undefined
      : top !== undefined &&
        { part: partsOf, label: labelsOf, stock: stockOf, parameter: partsOf }
          [wanted.kind](top, wanted.file)
          .has(newName);
  return taken ? `"${newName}" is taken.` : undefined;
}

const holds = (top: Definition['bound'], wanted: Definition): boolean =>
  top === wanted.bound || top.block.some((each) => holds(each, wanted));
