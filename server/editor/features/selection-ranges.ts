import type { SelectionRange } from 'vscode-languageserver';
import { blockStart } from '../../../grammar';
import { boundView } from '../asking';
import { lookAt } from '../look';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** A selection grows from the token to its clause, its line, its block, and so outwards. */
export const selectionRanges: Feature = {
  name: 'selection ranges',
  capabilities: { selectionRangeProvider: true },
  register(connection, session, log) {
    connection.onSelectionRanges(
      guarded(log, 'selection ranges', null, ({ textDocument, positions }) => {
        const view = boundView(session, textDocument.uri);
        if (view === undefined) return null;
        const { document, bound } = view;
        return positions.map((position): SelectionRange => {
          const offset = document.offsetAt(position);
          const look = lookAt(bound, offset);
          const spans: [number, number][] = [[0, document.text.length]];
          for (const { item, at } of look.path) {
            const last = (item.kind === 'statement' && item.block ? item.tail : item.head).at(-1);
            const first = item.head.find((token) => token.kind !== 'space');
            spans.push([at + (first?.at ?? 0), at + item.length - (last?.kind === 'newline' ? last.text.length : 0)]);
            if (item.kind === 'statement' && item.block)
              spans.push([
                at + blockStart(item),
                at + blockStart(item) + item.block.length - (item.block.close.at(-1)?.text.length ?? 0),
              ]);
          }
          const placed = look.bound;
          for (const span of Object.values(placed?.bound.spans ?? {}))
            spans.push([placed!.at + span.from, placed!.at + span.to]);
          if (look.token) spans.push([look.token.at, look.token.at + look.token.token.text.length]);
          const around = spans
            .filter(([from, to]) => from <= offset && offset <= to)
            .sort((a, b) => b[1] - b[0] - (a[1] - a[0]));
          let found: SelectionRange | undefined;
          for (const [from, to] of around) {
            const range = document.lines.range(from, to);
            found = found === undefined ? { range } : { range, parent: found };
          }
          return found ?? { range: { start: position, end: position } };
        });
      }),
    );
  },
};
