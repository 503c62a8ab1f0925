import { isUtf8 } from 'node:buffer';
import { readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { join, sep } from 'node:path';
import { passedBy } from '../engine/passed-by';

/** A folder with more folders or files in it than this is walked so far and no further. */
const mostFolders = 20_000;
const mostFiles = 10_000;
/** Bytes of a file that are read; a plan of that size is past what the grammar takes, and it says so. */
const mostBytes = 8 * 1024 * 1024;

export interface ReadText {
  readonly text: string;
  /** False where the bytes are no UTF-8, or were cut off: such a text must not be written back. */
  readonly faithful: boolean;
}

export const isInside = (path: string, root: string): boolean =>
  path === root || path.startsWith(root.endsWith(sep) ? root : root + sep);

/** The path with all links followed, or undefined where there is nothing. */
export function realPath(path: string): string | undefined {
  try {
    return realpathSync(path);
  } catch {
    return undefined;
  }
}

export function decoded(bytes: Uint8Array): ReadText {
  const kept = bytes.subarray(0, mostBytes);
  return { text: Buffer.from(kept).toString('utf8'), faithful: kept.length === bytes.length && isUtf8(kept) };
}

/** Reads a file inside `root` (a real path), links followed; or says why not, in words that follow its name. */
export function readInside(root: string, path: string): ReadText | { readonly why: string } {
  const real = realPath(join(root, path));
  if (real === undefined) return { why: 'is not there' };
  if (!isInside(real, root)) return { why: `leads outside the folder ${root}; nothing outside it is read` };
  try {
    // A pipe or a device would make the program wait for ever.
    if (!statSync(real).isFile()) return { why: 'is no file' };
    return decoded(readFileSync(real));
  } catch (error) {
    return { why: whyNot(error) };
  }
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'is not there',
  EACCES: 'may not be read or written by you',
  EPERM: 'may not be read or written by you',
  EISDIR: 'is a folder',
  ENOTDIR: 'lies in something that is no folder',
  ENOSPC: 'finds no room on the disk',
  EROFS: 'lies on a disk that cannot be written',
};

/** Why a file could not be read or written, in words that follow its name. */
export function whyNot(error: unknown): string {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? '';
  return reasons[code] ?? `cannot be used (${code || String(error)})`;
}

/** The plan files below a folder, in the order of their names, with `/`. Links are not followed, so the walk ends and stays inside. */
export function plansBelow(root: string): readonly string[] {
  const found: string[] = [];
  const waiting = [''];
  let walked = 0;
  for (let folder = waiting.pop(); folder !== undefined && walked < mostFolders; folder = waiting.pop()) {
    walked += 1;
    for (const entry of entriesOf(join(root, folder))) {
      if (entry.name.startsWith('.') || passedBy.has(entry.name)) continue;
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      if (entry.isDirectory()) waiting.push(path);
      else if (entry.isFile() && entry.name.endsWith('.jobplan') && found.length < mostFiles) found.push(path);
    }
  }
  return found.sort();
}

function entriesOf(folder: string) {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch {
    return [];
  }
}
