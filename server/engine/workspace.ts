import { createGrammar, type Grammar } from '../../grammar';
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

  /** Puts a file in whole; null says that the file is known not to be there. */
  setFile(path: string, text: string | null): void {
    this.current = null;
    if (text === null) {
      this.trees.delete(path);
      this.missing.add(path);
    } else {
      this.trees.set(path, theGrammar().parse(text));
      this.missing.delete(path);
    }
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
