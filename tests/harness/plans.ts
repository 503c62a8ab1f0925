import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Workspace } from '../../server/engine/workspace';

/** The folders of sound plans that edits are made of. */
export const folders = ['tests/fixtures/samples', 'tests/fixtures/good', 'examples'];
export type Files = Readonly<Record<string, string>>;

export function filesOf(folder: string): Files {
  if (!existsSync(folder)) return {};
  const names = readdirSync(folder).filter((name) => name.endsWith('.jobplan'));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}

export function workspaceOf(files: Files): Workspace {
  const workspace = new Workspace();
  for (const [path, text] of Object.entries(files)) workspace.setFile(path, text);
  return workspace;
}

/** The plan files of a folder that have no finding above information as they are: an edit's finding is then the edit's. */
export const sound = (files: Files): readonly string[] => {
  const snapshot = workspaceOf(files).snapshot();
  return snapshot.paths.filter(
    (path) =>
      snapshot.plans(path).length > 0 && snapshot.findings(path).every((finding) => finding.severity === 'information'),
  );
};

/** A number from a text, the same on every machine (FNV-1a, 32 bit). */
export function numberOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let k = 0; k < text.length; k++) hash = Math.imul(hash ^ text.charCodeAt(k), 0x01000193) >>> 0;
  hash ^= hash >>> 15;
  return Math.imul(hash, 0x2c1b3c6d) >>> 0;
}

/** Three plans in ten are kept back, by their names: nobody reads their survivors. */
export const heldOut = (file: string): boolean => numberOf(`kept back ${file}`) % 10 < 3;
