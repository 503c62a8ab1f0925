import type { Location } from 'vscode-languageserver';
import type { Bound } from '../engine/plan/bind';
import type { Span } from '../engine/plan/read-terms';
import { rangeOf } from './diagnostics';
import type { Snapshot } from './engine';
import type { Folder } from './folder';

/** A span of a statement as the protocol has it; undefined when the statement is no longer there. */
export function locationOf(
  folder: Folder,
  snapshot: Snapshot,
  { file, bound, from, to }: Span & { readonly file: string; readonly bound: Bound },
): Location | undefined {
  const range = rangeOf(folder, snapshot, { file, item: bound.item, from, to });
  return range === undefined ? undefined : { uri: folder.uriOf(file), range };
}
