import type { ClientCapabilities, WorkspaceFolder } from 'vscode-languageserver';
import type { Document } from './document';
import type { Door } from './door';
import type { Snapshot, SourceFile, Workspace } from './engine';
import { Folder } from './folder';

/** A file at this moment, with all that a feature needs to answer about it. */
export interface View {
  readonly folder: Folder;
  readonly path: string;
  readonly document: Document;
  readonly file: SourceFile;
  readonly snapshot: Snapshot;
}

/** All that the server knows: its workspace folders, each with its engine, and the documents in them. */
export class Session {
  private readonly all: Folder[] = [];
  /** What the client can do, as it said when it began. */
  client: ClientCapabilities = {};
  /** Whether the client shows the pages of checks. */
  showsPages = false;

  constructor(private readonly makeWorkspace: () => Workspace) {}

  get folders(): readonly Folder[] {
    return this.all;
  }

  /** The addresses of the workspace folders, without those that stand for a loose document. */
  get roots(): readonly string[] {
    return this.all.filter((folder) => !folder.loose).map((folder) => folder.uri);
  }

  addFolder({ uri }: Pick<WorkspaceFolder, 'uri'>): Folder {
    const folder = new Folder(uri, this.makeWorkspace(), false);
    this.all.push(folder);
    return folder;
  }

  removeFolder(uri: string): Folder | undefined {
    const place = this.all.findIndex((folder) => folder.uri === uri);
    return place < 0 ? undefined : this.all.splice(place, 1)[0];
  }

  /** The innermost folder that holds an address, with the path in it. */
  find(uri: string): { folder: Folder; path: string } | undefined {
    let found: { folder: Folder; path: string } | undefined;
    for (const folder of this.all) {
      const path = folder.pathOf(uri);
      if (path !== undefined && (found === undefined || path.length < found.path.length)) found = { folder, path };
    }
    return found;
  }

  /** As `find`; an address outside every folder becomes a folder of its own. */
  findOrAdd(uri: string): { folder: Folder; path: string } {
    const found = this.find(uri);
    if (found !== undefined) return found;
    const folder = new Folder(uri, this.makeWorkspace(), true);
    folder.loaded = true;
    this.all.push(folder);
    return { folder, path: folder.pathOf(uri) ?? uri };
  }

  view(uri: string): View | undefined {
    const found = this.find(uri);
    if (found === undefined) return undefined;
    const document = found.folder.document(found.path);
    const snapshot = found.folder.snapshot;
    const file = snapshot.file(found.path);
    return document === undefined || file === undefined ? undefined : { ...found, document, file, snapshot };
  }
}

/** Reads a folder's closed files through the door. Files that the editor has open, or opens meanwhile, stay as they are. */
export async function loadFolder(folder: Folder, door: Door): Promise<void> {
  const uris = await door.list([folder.uri]);
  await Promise.all(uris.map((uri) => loadFile(folder, uri, door)));
  await loadWanted(folder, door);
}

/** Reads, or reads again, one closed file. */
export async function loadFile(folder: Folder, uri: string, door: Door): Promise<void> {
  const path = folder.pathOf(uri);
  if (path === undefined || isOpen(folder, path)) return;
  const text = await door.read(uri, [folder.uri]);
  if (isOpen(folder, path)) return;
  if (text !== null) folder.put(path, uri, text);
  else if (folder.document(path) !== undefined) folder.remove(path);
}

/** Fetches what `use` asks for and the list did not name, until nothing more is wanted. Says whether anything came. */
export async function loadWanted(folder: Folder, door: Door): Promise<boolean> {
  let came = false;
  for (let wanted = folder.workspace.wanted(); wanted.length > 0; wanted = folder.workspace.wanted()) {
    for (const path of wanted) {
      const uri = folder.uriOf(path);
      const text = folder.loose ? null : await door.read(uri, [folder.uri]);
      if (isOpen(folder, path)) continue;
      if (text === null) folder.workspace.setFile(path, null);
      else folder.put(path, uri, text);
      came = true;
    }
  }
  return came;
}

function isOpen(folder: Folder, path: string): boolean {
  return folder.document(path)?.version !== undefined;
}
