import { printable } from '../../engine/printable';
import { sheetBody } from '../../engine/procedure/html/html';
import { sheetStyle } from '../../engine/procedure/html/style';
import { boundView } from '../asking';
import type { PlanView } from '../engine';
import { forEachPlaced } from '../placed';
import { planOf } from '../plan-around';
import { type Sheet, type SheetParameters, sheetRequest } from '../protocol';
import type { Session } from '../session';
import { guarded } from '../turns';
import type { Feature } from './feature';

/** The printed procedure of the plan in a file, for the preview. */
export const sheet: Feature = {
  name: 'printed procedure',
  capabilities: {},
  register(connection, session, log) {
    connection.onRequest(
      sheetRequest,
      guarded(log, 'sheet', null, ({ uri, line }: SheetParameters): Sheet | null => {
        const view = boundView(session, uri);
        const plan = planAt(session, uri, line ?? 0);
        if (view === undefined || plan === undefined) return null;
        const procedure = printable(view.snapshot, plan, { units: 'both', workings: false });
        return { html: sheetBody(procedure), style: sheetStyle, version: view.document.version ?? null };
      }),
    );
  },
};

/** The plan that a line stands in or behind, else the file's first. */
function planAt(session: Session, uri: string, line: number): PlanView | undefined {
  const view = boundView(session, uri);
  if (view === undefined) return undefined;
  const { document, snapshot, path, bound: file } = view;
  const offset = document.offsetAt({ line, character: 0 });
  let found: PlanView | undefined;
  forEachPlaced<true>(
    file,
    (bound, at) => {
      if (bound.word?.word === 'plan' && (found === undefined || at <= offset))
        found = planOf(snapshot, path, bound) ?? found;
      return undefined;
    },
    true,
  );
  return found;
}
