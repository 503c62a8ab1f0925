import type { Token } from '../../../grammar/tree';
import type { Proposal, Setting } from './proposal';

/** Files of the workspace folder that a `use` may name, written from this file. */
export function usePaths(here: Setting, text: Token): readonly Proposal[] {
  const begin = here.start + text.at + 1;
  const used = new Set(
    here.file.uses.flatMap((use) => ('path' in use.lead && use.bound.item !== here.statement ? [use.lead.path] : [])),
  );
  return here.snapshot.paths
    .filter((path) => path !== here.path && !used.has(path))
    .map((path) => relative(here.path, path))
    .sort((a, b) => depth(a) - depth(b) || a.localeCompare(b))
    .map((path, rank) => ({ label: path, kind: 'path', from: begin, rank }));
}

const depth = (path: string): number => path.split('/').length;

/** The way from one file to another, both counted from the workspace folder. */
export function relative(from: string, to: string): string {
  const here = from.split('/').slice(0, -1);
  const there = to.split('/');
  while (here.length > 0 && there.length > 1 && here[0] === there[0]) {
    here.shift();
    there.shift();
  }
  return [...here.map(() => '..'), ...there].join('/');
}
