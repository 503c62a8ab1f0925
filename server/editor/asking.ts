import type { Position } from 'vscode-languageserver';
import type { BoundFile } from './engine';
import { type Look, lookAt } from './look';
import type { Session, View } from './session';

/** A view with its words bound, and what stands at the position that was asked about. */
export interface Asked extends View {
  readonly bound: BoundFile;
  readonly offset: number;
  readonly look: Look;
}

/** The view of a document with its words bound; undefined when the document is not known. */
export function boundView(session: Session, uri: string): (View & { readonly bound: BoundFile }) | undefined {
  const view = session.view(uri);
  const bound = view?.snapshot.bound(view.path);
  return view === undefined || bound === undefined ? undefined : { ...view, bound };
}

/** What a request about a position needs; undefined when the document is not known. */
export function askedAt(session: Session, uri: string, position: Position): Asked | undefined {
  const view = boundView(session, uri);
  if (view === undefined) return undefined;
  const { document } = view;
  const offset = document.offsetAt(position);
  return { ...view, offset, look: lookAt(view.bound, offset) };
}
