import { createGrammar, type Grammar, print } from '../../grammar';
import type { Tree } from '../../grammar/tree';
import { Binder } from './plan/bind';
import { unitWords } from './quantity';
import { type Kept, Snapshot } from './snapshot';
import { vocabulary } from './vocabulary';

export interface TextChange {
  /** UTF-16 offsets in the text before the change. */
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** The one change that makes a text of another; null where they are the same. Whole lines, so that no sign is cut in two. */
function difference(before: string, after: string): TextChange | null {
  if (before === after) return null;
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from < most && before[from] === after[from]) from++;
  from = from === 0 ? 0 : before.lastIndexOf('\n', from - 1) + 1;
  let same = 0;
  while (same < most - from && before[before.length - 1 - same] === after[after.length - 1 - same]) same++;
  return { from, to: before.length - same, text: after.slice(from, after.length - same) };
}

let grammar: Grammar | null = null;
/** The one grammar of the language, made when the first text is read. */
export const theGrammar = (): Grammar => (grammar ??= createGrammar(unitWords));

/** The files of a workspace folder, by path relative to it, and the snapshot of the moment. */
export class Workspace {
  private readonly trees = new Map<string, Tree>();
  private readonly missing = new Set<string>();
  private readonly kept: Kept;
  private current: Snapshot | null = null;

  /** `today`, as `2027-05-18`, is what rules go by in plans that state no date: the engine has no clock of its own. */
  constructor(today: string | null = null) {
    this.kept = { today, binder: new Binder(vocabulary), files: new Map(), views: new Map() };
  }

  /**
   * Puts a file in whole; null says that the file is known not to be there. Of a file that is there already only the
   * stretch that differs is read anew, so that opening a standard, or fetching a new one, does not make all jobs new.
   */
  setFile(path: string, text: string | null): void {
    if (text === null) {
      this.current = null;
      this.trees.delete(path);
      this.missing.add(path);
      return;
    }
    const tree = this.trees.get(path);
    if (!tree) {
      this.current = null;
      this.trees.set(path, theGrammar().parse(text));
      this.missing.delete(path);
      return;
    }
    const change = difference(print(tree), text);
    if (change) this.edit(path, [change]);
  }

  /** Changes a file, one change after the other; each counts from the text that the one before left. */
  edit(path: string, changes: readonly TextChange[]): void {
    let tree = this.trees.get(path);
    if (!tree) return;
    this.current = null;
    for (const change of changes) tree = theGrammar().edit(tree, change.from, change.to, change.text);
    this.trees.set(path, tree);
  }

  removeFile(path: string): void {
    this.setFile(path, null);
    this.kept.files.delete(path);
    for (const key of this.kept.views.keys()) if (key.startsWith(`${path}\n`)) this.kept.views.delete(key);
  }

  /** Files that a `use` asks for and that nobody has put in or declared missing. */
  wanted(): readonly string[] {
    const wanted = new Set<string>();
    const snapshot = this.snapshot();
    for (const path of this.trees.keys()) {
      for (const use of snapshot.bound(path)?.uses ?? []) {
        if ('path' in use.lead && !this.trees.has(use.lead.path) && !this.missing.has(use.lead.path))
          wanted.add(use.lead.path);
      }
    }
    return [...wanted];
  }

  snapshot(): Snapshot {
    return (this.current ??= new Snapshot(new Map(this.trees), new Set(this.missing), this.kept));
  }
}
