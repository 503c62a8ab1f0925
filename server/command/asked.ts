import { statSync } from 'node:fs';
import { dirname, isAbsolute, relative, resolve, sep } from 'node:path';
import { decoded, isInside, plansBelow, type ReadText, readInside, realPath, whyNot } from './folder';
import type { Host } from './host';
import { Trouble } from './trouble';

/** The name of standard input, where it stands for a file of the current folder. */
export const standardInput = '-';

/** Files that were asked for, all below one folder: what they use is read from there, and from nowhere else. */
export interface Asked {
  /** The real path of the folder. */
  readonly root: string;
  /** Relative to it, with `/`. */
  readonly files: readonly string[];
  readonly read: (path: string) => ReadText | { readonly why: string };
  /** How people know a file: from the current folder, or in full where it lies elsewhere. */
  readonly shown: (path: string) => string;
}

/**
 * Finds what the arguments name. A folder gives all plan files below it. A file belongs to the nearest folder around it
 * that was given too, else to the current folder, else (it lies elsewhere) to the folder that it stands in.
 */
export async function askedFor(host: Host, words: readonly string[]): Promise<readonly Asked[]> {
  const current = realPath(host.folder) ?? host.folder;
  const named = (words.length === 0 ? ['.'] : words).map((word) => ({ word, path: resolve(host.folder, word) }));
  const folders: string[] = [];
  const files: { readonly word: string; readonly path: string }[] = [];
  for (const each of named) {
    if (each.word === standardInput) continue;
    if (kindOf(each) === 'folder') folders.push(realPath(each.path)!);
    else files.push(each);
  }
  const nearest = (path: string): string | undefined =>
    folders.filter((folder) => isInside(path, folder)).sort((a, b) => b.length - a.length)[0];

  const byRoot = new Map<string, Set<string>>();
  const add = (root: string, path: string): void => {
    const known = byRoot.get(root);
    if (known) known.add(path);
    else byRoot.set(root, new Set([path]));
  };
  for (const folder of folders) {
    if (!byRoot.has(folder)) byRoot.set(folder, new Set());
    for (const path of plansBelow(folder)) if (nearest(resolve(folder, path)) === folder) add(folder, path);
  }
  for (const { word, path } of files) {
    const stands = realPath(dirname(path))!;
    const root = nearest(stands) ?? (isInside(stands, current) ? current : stands);
    const real = realPath(path)!;
    if (!isInside(real, root)) {
      throw new Trouble(`${word} leads outside the folder ${root}; nothing outside it is read.`);
    }
    add(root, slashed(relative(root, real)));
  }
  const typed = named.some(({ word }) => word === standardInput) ? decoded(await host.input()) : null;
  if (typed) add(current, standardInput);
  return [...byRoot].map(([root, paths]) => ({
    root,
    files: [...paths],
    read: (path) => (path === standardInput && typed ? typed : readInside(root, path)),
    shown: (path) => (path === standardInput ? path : shownFrom(current, resolve(root, path))),
  }));
}

function kindOf({ word, path }: { readonly word: string; readonly path: string }): 'folder' | 'file' {
  let found: ReturnType<typeof statSync>;
  try {
    found = statSync(path);
  } catch (error) {
    throw new Trouble(`${word} ${whyNot(error)}.`);
  }
  if (found.isDirectory()) return 'folder';
  if (!found.isFile()) throw new Trouble(`${word} is no file.`);
  if (!path.endsWith('.jobplan')) throw new Trouble(`${word} is no .jobplan file.`);
  return 'file';
}

const slashed = (path: string): string => path.split(sep).join('/');

function shownFrom(current: string, path: string): string {
  const near = relative(current, path);
  return slashed(near.startsWith('..') || isAbsolute(near) ? path : near);
}
