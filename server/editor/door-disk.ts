import { open, readdir, realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Door } from './door';
import { passedBy } from './protocol';

/** A workspace with more folders or files than this is walked so far and no further. */
const mostFolders = 20_000;
const mostFiles = 10_000;
/** Bytes of a file that are read; a plan of that size is past what the grammar takes, and it says so. */
const mostBytes = 8 * 1024 * 1024;

/** The file door of a server on a machine with a disk: inside the workspace folders only, whatever links say. */
export const diskDoor: Door = {
  async list(folders) {
    const found: string[] = [];
    for (const folder of folders) {
      const root = await real(folder);
      if (root !== undefined) await walk(root, root, found, folder);
    }
    return found;
  },

  async read(uri, folders) {
    const path = await real(uri);
    if (path === undefined) return null;
    for (const folder of folders) {
      const root = await real(folder);
      if (root !== undefined && path.startsWith(root.endsWith(sep) ? root : root + sep)) return readText(path);
    }
    return null;
  },
};

/** The path behind an address with all links followed, or undefined when there is nothing. */
async function real(uri: string): Promise<string | undefined> {
  try {
    return await realpath(fileURLToPath(uri));
  } catch {
    return undefined;
  }
}

/** Lists plan files below a folder; names that begin with a dot are passed by, and links are not followed, so the walk ends and stays inside. */
async function walk(root: string, start: string, found: string[], folderUri: string): Promise<void> {
  const waiting = [start];
  let walked = 0;
  for (let folder = waiting.pop(); folder !== undefined && walked < mostFolders; folder = waiting.pop()) {
    walked += 1;
    const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
    for (const entry of entries) {
      if (entry.name.startsWith('.') || passedBy.has(entry.name)) continue;
      const path = join(folder, entry.name);
      if (entry.isDirectory()) waiting.push(path);
      else if (entry.isFile() && entry.name.endsWith('.jobplan') && found.length < mostFiles) {
        found.push(addressBelow(folderUri, root, path));
      }
    }
  }
}

/** Files are named below the folder as the client names it, also when the folder itself is reached by a link. */
function addressBelow(folderUri: string, root: string, path: string): string {
  const base = pathToFileURL(root).href;
  const full = pathToFileURL(path).href;
  return folderUri.replace(/\/$/, '') + full.slice(base.replace(/\/$/, '').length);
}

async function readText(path: string): Promise<string | null> {
  try {
    const file = await open(path, 'r');
    try {
      const { size } = await file.stat();
      const bytes = Buffer.alloc(Math.min(size, mostBytes));
      const { bytesRead } = await file.read(bytes, 0, bytes.length, 0);
      return bytes.toString('utf8', 0, bytesRead);
    } finally {
      await file.close();
    }
  } catch {
    return null;
  }
}
