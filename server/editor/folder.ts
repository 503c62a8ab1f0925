import type { Place } from '../engine/finding';
import { Document } from './document';
import type { Snapshot, Workspace } from './engine';
import { ItemPlaces } from './places';

/**
 * One workspace folder with its engine: plans reach no further than their folder. A document outside every folder, or
 * one that was never saved, is a folder of itself alone.
 */
export class Folder {
  private readonly documents = new Map<string, Document>();
  private readonly places = new Map<string, ItemPlaces>();
  /** False until the closed files are in; nothing is published before, or names would seem unknown for a moment. */
  loaded = false;

  constructor(
    readonly uri: string,
    readonly workspace: Workspace,
    /** True for a folder that stands for one loose document. */
    readonly loose: boolean,
  ) {}

  /** The path of an address in this folder, or undefined when it lies outside. */
  pathOf(uri: string): string | undefined {
    const root = plain(this.uri).replace(/\/$/, '');
    const address = plain(uri);
    if (this.loose) return address === plain(this.uri) ? lastName(address) : undefined;
    return address.startsWith(`${root}/`) ? address.slice(root.length + 1) : undefined;
  }

  /** The address of a path, as the client writes it when it has named the file before. */
  uriOf(path: string): string {
    const known = this.documents.get(path)?.uri;
    if (known !== undefined) return known;
    if (this.loose) return this.uri;
    return `${this.uri.replace(/\/$/, '')}/${path.split('/').map(encodeURIComponent).join('/')}`;
  }

  get snapshot(): Snapshot {
    return this.workspace.snapshot();
  }

  document(path: string): Document | undefined {
    return this.documents.get(path);
  }

  get paths(): IterableIterator<string> {
    return this.documents.keys();
  }

  /** The documents that the editor has open. */
  openDocuments(): Document[] {
    return [...this.documents.values()].filter(({ version }) => version !== undefined);
  }

  /** Puts in an open document (with its version) or the text of a closed file (without). */
  put(path: string, uri: string, text: string, version?: number): void {
    this.documents.set(path, new Document(uri, text, version));
    this.workspace.setFile(path, text);
  }

  remove(path: string): void {
    this.documents.delete(path);
    this.places.delete(path);
    this.workspace.removeFile(path);
  }

  /** The offset of a place in its file now, or undefined when the file or the item is gone. */
  offsetOf(place: Place, snapshot: Snapshot): number | undefined {
    const file = snapshot.file(place.file);
    if (file === undefined) return undefined;
    const places = this.places.get(place.file) ?? new ItemPlaces();
    this.places.set(place.file, places);
    return places.offsetOf(file.tree, place.item);
  }
}

/** An address in one spelling: clients escape differently and write a drive's letter in either case. */
function plain(uri: string): string {
  let decoded = uri;
  try {
    decoded = decodeURIComponent(uri);
  } catch {
    // A stray percent sign: the address is taken as it stands.
  }
  return decoded.replace(/^file:\/\/\/([A-Z]):/, (_, drive: string) => `file:///${drive.toLowerCase()}:`);
}

function lastName(address: string): string {
  return address.slice(Math.max(address.lastIndexOf('/'), address.lastIndexOf(':')) + 1);
}
