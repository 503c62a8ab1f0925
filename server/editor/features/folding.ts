import { type FoldingRange, FoldingRangeKind } from 'vscode-languageserver';
import { walk } from '../../../grammar';
import type { Item } from '../../../grammar/tree';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** Blocks and runs of comment lines fold. */
export const folding: Feature = {
  name: 'folding ranges',
  capabilities: { foldingRangeProvider: true },
  register(connection, session, log) {
    connection.onFoldingRanges(
      guarded(log, 'folding', null, ({ textDocument }) => {
        const view = session.view(textDocument.uri);
        if (view === undefined) return null;
        const { lines } = view.document;
        const found: FoldingRange[] = [];
        let comments: { first: number; last: number } | undefined;
        const endComments = (): void => {
          if (comments && comments.last > comments.first)
            found.push({ startLine: comments.first, endLine: comments.last, kind: FoldingRangeKind.Comment });
          comments = undefined;
        };
        walk(view.file.tree, (item, at) => {
          const line = lines.positionAt(at).line;
          const goesOn = isComment(item) && comments?.last === line - 1;
          if (!goesOn) endComments();
          if (isComment(item)) comments = { first: (goesOn ? comments?.first : undefined) ?? line, last: line };
          if (item.kind !== 'statement' || item.block === null) return undefined;
          const tail = item.tail.reduce((sum, token) => sum + token.text.length, 0);
          const endLine = lines.positionAt(at + item.length - tail).line - 1;
          if (endLine > line) found.push({ startLine: line, endLine });
          return undefined;
        });
        endComments();
        return found;
      }),
    );
  },
};

const isComment = (item: Item): boolean => item.kind === 'blank' && item.head.some((token) => token.kind === 'comment');
