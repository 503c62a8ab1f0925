import { type InlayHint, MarkupKind } from 'vscode-languageserver';
import { ownSystem } from '../../engine/plan/own-system';
import { showFigure } from '../../engine/takeoff/show-figure';
import { boundView } from '../asking';
import type { PlanView } from '../engine';
import { hintsOf } from '../hints/choose';
import { figurePage } from '../hover/figure';
import { headEnd } from '../look';
import { forEachPlaced } from '../placed';
import { planOf } from '../plan-around';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** Computed figures at the end of their lines; their workings in the tooltip. */
export const inlayHints: Feature = {
  name: 'inlay hints',
  capabilities: { inlayHintProvider: true },
  register(connection, session, log) {
    connection.languages.inlayHint.on(
      guarded(log, 'inlay hints', null, ({ textDocument, range }) => {
        const view = boundView(session, textDocument.uri);
        if (view === undefined) return null;
        const { document, snapshot, path, bound: file } = view;
        const from = document.offsetAt(range.start);
        const to = document.offsetAt(range.end);
        const found: InlayHint[] = [];
        forEachPlaced<PlanView | null>(
          file,
          (bound, at, around) => {
            if (at > to || at + bound.item.length < from) return undefined;
            if (bound.place === 'file') return bound.word?.word === 'plan' ? planOf(snapshot, path, bound) : undefined;
            if (around === null) return undefined;
            const { atmosphere } = around.plan.site;
            const system = ownSystem(around.plan.head);
            const end = at + headEnd(bound.item);
            if (end >= from && end <= to) {
              for (const { before, behind, figure } of hintsOf(around, bound)) {
                found.push({
                  position: document.lines.positionAt(end),
                  label: `${before}${showFigure(figure, { atmosphere, system })}${behind}`,
                  paddingLeft: true,
                  tooltip: { kind: MarkupKind.Markdown, value: figurePage(figure, atmosphere) },
                });
              }
            }
            return around;
          },
          null,
        );
        return found;
      }),
    );
  },
};
