import type { Tree } from '../../grammar/tree';
import type { Finding } from '../engine/finding';

/** What the editor asks of the engine. Paths are relative to the workspace folder, with `/` between names. */
export interface Workspace {
  /** Puts a file in whole; null says that the file is known not to be there. */
  setFile(path: string, text: string | null): void;
  /** Changes a file. Offsets count in UTF-16 units of the text before the change. */
  edit(path: string, changes: readonly TextChange[]): void;
  removeFile(path: string): void;
  /** Files that a `use` asks for and that nobody has put in or declared missing. */
  wanted(): readonly string[];
  snapshot(): Snapshot;
}

export interface TextChange {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** All files at one moment, and what follows from them. */
export interface Snapshot {
  readonly paths: readonly string[];
  file(path: string): SourceFile | undefined;
  findings(path: string): readonly Finding[];
}

export interface SourceFile {
  readonly path: string;
  readonly text: string;
  readonly tree: Tree;
}
