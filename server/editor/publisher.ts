import equal from 'fast-deep-equal';
import type { Connection, Diagnostic } from 'vscode-languageserver';
import type { Finding } from '../engine/finding';
import { diagnosticsOf } from './diagnostics';
import type { Snapshot } from './engine';
import type { Folder } from './folder';
import type { Session } from './session';
import { type Log, later } from './turns';

/** Milliseconds of work on other files after which a waiting key press or request gets its turn. */
const slice = 8;
/** Milliseconds without a change after which the checks that walk a plan are made, where they take longer than a moment. */
const pause = 150;
/** Milliseconds that all findings of a document may take and still go out with the key press. */
const moment = 4;
/** Turns that a publication waits at most while further changes keep coming in. */
const mostTurns = 20;

/** What was last said of a file. */
interface Said {
  readonly folder: Folder;
  readonly version: number | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/** What the whole check of a document took, and how what it found differs from what is found sooner. */
interface Checked {
  readonly milliseconds: number;
  /** What the whole check found beside `Snapshot.firstFindings`, and beside `Snapshot.plainFindings`. */
  readonly firstFindings: readonly Finding[];
  readonly plainFindings: readonly Finding[];
  /** What is found sooner and is not said in the end. */
  readonly silent: ReadonlySet<string>;
}

/**
 * Publishes findings without being asked: the changed document at once, then every other file of its folder, open or
 * closed, that the change may have touched. Changes that are already queued are taken in first.
 *
 * A long plan takes a while to look at as a whole. Of such a document the findings of text, words and single steps go out
 * at once, with those of the last check beside them; the whole is checked anew when the typing pauses.
 */
export class Publisher {
  /** Changed documents whose findings are to go out first. */
  private readonly urgent = new Map<Folder, Set<string>>();
  /** Files that changed; whatever draws on them is looked at again. */
  private readonly touched = new Map<Folder, Set<string>>();
  /** Files to be looked at again when there is time. */
  private readonly others = new Map<Folder, Set<string>>();
  /** What was published last for an address, so that nothing is said twice. */
  private readonly said = new Map<string, Said>();
  /** What the last check of a document took, what only the plan as a whole gave, and what it took the place of. */
  private readonly checked = new Map<string, Checked>();
  private idle: ReturnType<typeof setTimeout> | undefined;
  private waiting = false;
  private changes = 0;

  constructor(
    private readonly connection: Connection,
    private readonly log: Log,
    private readonly session: Session,
  ) {}

  /** A document changed: its findings go out in this turn, those of the files that draw on it when there is time. */
  changed(folder: Folder, path: string): void {
    add(this.urgent, folder, path);
    add(this.touched, folder, path);
    this.soon();
  }

  /** Files came or went: all findings of the folder are looked at again. */
  everything(folder: Folder): void {
    for (const path of folder.paths) add(this.others, folder, path);
    this.soon();
  }

  private soon(): void {
    this.changes += 1;
    clearTimeout(this.idle);
    if (this.waiting) return;
    this.waiting = true;
    this.wait(this.changes, 0);
  }

  /** The folder is gone, and its findings with it. */
  forget(folder: Folder): void {
    this.urgent.delete(folder);
    this.touched.delete(folder);
    this.others.delete(folder);
    for (const [uri, { folder: owner }] of this.said) if (owner === folder) this.withdraw(uri);
  }

  /** A file is gone, and its findings with it. */
  withdraw(uri: string): void {
    this.checked.delete(uri);
    if (!this.said.delete(uri)) return;
    void this.connection.sendDiagnostics({ uri, diagnostics: [] });
  }

  /** Lets one turn pass, and more while each of them brings another change. */
  private wait(seen: number, turns: number): void {
    later(() => {
      if (this.changes !== seen && turns < mostTurns) this.wait(this.changes, turns + 1);
      else this.work();
    });
  }

  private work(): void {
    this.waiting = false;
    let left = false;
    for (const [folder, paths] of this.urgent) {
      if (!folder.loaded) continue;
      this.urgent.delete(folder);
      const whole = new Set<string>();
      for (const path of paths) {
        if (this.takesLong(folder, path)) {
          left = true;
          this.publishPart(folder, path, 'firstFindings');
          // What single steps give follows in the next turn, if no key was pressed in between.
          const seen = this.changes;
          later(() => {
            if (this.changes === seen) this.publishPart(folder, path, 'plainFindings');
          });
        } else {
          this.others.get(folder)?.delete(path);
          this.publish(folder, folder.snapshot, path);
          whole.add(path);
        }
      }
      this.spread(folder, whole);
    }
    if (left) this.idle = setTimeout(() => this.sweep(), pause);
    else later(() => this.sweep());
  }

  private takesLong(folder: Folder, path: string): boolean {
    const uri = folder.document(path)?.uri;
    return uri !== undefined && (this.checked.get(uri)?.milliseconds ?? 0) > moment;
  }

  private sweep(): void {
    // A change waits for its turn; the sweep begins again after it.
    if (this.waiting) return;
    const until = performance.now() + slice;
    for (const [folder, paths] of this.others) {
      if (!folder.loaded) continue;
      const snapshot = folder.snapshot;
      // What is open is in somebody's sight: it comes first.
      const open = [...paths].filter((path) => isOpen(folder, path));
      for (const path of [...open, ...paths]) {
        if (!paths.has(path)) continue;
        if (performance.now() > until) {
          later(() => this.sweep());
          return;
        }
        paths.delete(path);
        this.publish(folder, snapshot, path);
      }
      this.others.delete(folder);
    }
  }

  /** Finds the files that draw on those that changed, themselves included, and leaves out what is just published. */
  private spread(folder: Folder, published: ReadonlySet<string>): void {
    const changed = this.touched.get(folder);
    if (changed === undefined) return;
    this.touched.delete(folder);
    const { snapshot } = folder;
    for (const path of folder.paths) {
      if (published.has(path)) continue;
      if (changed.has(path) || snapshot.closure(path).some((each) => changed.has(each.path)))
        add(this.others, folder, path);
    }
  }

  private publish(folder: Folder, snapshot: Snapshot, path: string): void {
    const uri = folder.document(path)?.uri;
    if (uri === undefined) return;
    try {
      const began = performance.now();
      const findings = snapshot.findings(path);
      const milliseconds = performance.now() - began;
      // Only of an open document that takes long are parts ever published by themselves.
      if (milliseconds > moment && isOpen(folder, path))
        this.checked.set(uri, partsOf(snapshot, path, findings, milliseconds));
      else this.checked.delete(uri);
      this.say(folder, snapshot, path, findings);
    } catch (error) {
      this.log(`findings of ${path}`, error);
    }
  }

  /** What is known already, and what the last check of the whole found beside it where the text still stands. */
  private publishPart(folder: Folder, path: string, part: 'firstFindings' | 'plainFindings'): void {
    const uri = folder.document(path)?.uri ?? '';
    try {
      const snapshot = folder.snapshot;
      const last = this.checked.get(uri);
      const found = snapshot[part](path).filter((finding) => !last?.silent.has(keyOf(finding)));
      this.say(folder, snapshot, path, [...found, ...(last ? last[part] : [])]);
    } catch (error) {
      this.log(`findings of ${path}`, error);
    }
  }

  private say(folder: Folder, snapshot: Snapshot, path: string, findings: readonly Finding[]): void {
    const document = folder.document(path);
    if (document === undefined) return;
    const diagnostics = diagnosticsOf(folder, snapshot, findings, this.session.showsPages);
    const { uri, version } = document;
    const before = this.said.get(uri);
    if (before === undefined && diagnostics.length === 0 && version === undefined) return;
    if (before?.version === version && equal(before?.diagnostics, diagnostics)) return;
    this.said.set(uri, { folder, version, diagnostics });
    void this.connection.sendDiagnostics({ uri, diagnostics, ...(version === undefined ? {} : { version }) });
  }
}

function partsOf(snapshot: Snapshot, path: string, findings: readonly Finding[], milliseconds: number): Checked {
  const first = new Set(snapshot.firstFindings(path).map(keyOf));
  const plain = new Set(snapshot.plainFindings(path).map(keyOf));
  const all = new Set(findings.map(keyOf));
  return {
    milliseconds,
    firstFindings: findings.filter((finding) => !first.has(keyOf(finding))),
    plainFindings: findings.filter((finding) => !plain.has(keyOf(finding))),
    silent: new Set([...plain].filter((key) => !all.has(key))),
  };
}

const isOpen = (folder: Folder, path: string): boolean => folder.document(path)?.version !== undefined;

/** What tells findings apart where the objects are made anew. */
const keyOf = ({ name, message, at }: Finding): string => `${name} ${at.from} ${at.to} ${message}`;

function add(sets: Map<Folder, Set<string>>, folder: Folder, path: string): void {
  const set = sets.get(folder);
  if (set === undefined) sets.set(folder, new Set([path]));
  else set.add(path);
}
