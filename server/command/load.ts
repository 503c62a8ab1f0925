import { Workspace } from '../engine/workspace';
import type { Asked } from './asked';
import { Places } from './places';

/** Files that were asked for, with all that they use, in an engine of their own. */
export interface Loaded {
  readonly asked: Asked;
  readonly workspace: Workspace;
  readonly places: Places;
  /** Those of the asked files that could be read. */
  readonly files: readonly string[];
  /** What could not be read, as sentences. */
  readonly unread: readonly string[];
}

/** `today` is the day that rules go by in plans without a date. */
export function load(asked: Asked, today: string): Loaded {
  const workspace = new Workspace(today);
  const files: string[] = [];
  const unread: string[] = [];
  for (const path of asked.files) {
    const read = asked.read(path);
    if ('why' in read) unread.push(`${asked.shown(path)} ${read.why}.`);
    else {
      workspace.setFile(path, read.text);
      files.push(path);
    }
  }
  // What the files use comes in by the same door, until nothing more is wanted; what is not there is a finding.
  for (let wanted = workspace.wanted(); wanted.length > 0; wanted = workspace.wanted()) {
    for (const path of wanted) {
      const read = asked.read(path);
      workspace.setFile(path, 'why' in read ? null : read.text);
    }
  }
  return { asked, workspace, files, unread, places: new Places(workspace.snapshot(), asked.shown) };
}
