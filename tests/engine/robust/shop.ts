import { readdirSync, readFileSync } from 'node:fs';
import { Workspace } from '../../../server/engine/workspace';

/** Texts of a workspace folder by path. */
export type Texts = Readonly<Record<string, string>>;

const textsOf = (folder: string): Texts => {
  const at = new URL(`../../../${folder}/`, import.meta.url);
  return Object.fromEntries(
    readdirSync(at)
      .filter((name) => name.endsWith('.jobplan'))
      .sort()
      .map((name) => [name, readFileSync(new URL(name, at), 'utf8')]),
  );
};

/** The folders of sound plans, each a workspace of its own. */
export const folders: Readonly<Record<string, Texts>> = {
  examples: textsOf('examples'),
  samples: textsOf('tests/fixtures/samples'),
  good: textsOf('tests/fixtures/good'),
};

export function workspaceOf(texts: Texts): Workspace {
  const workspace = new Workspace();
  for (const [path, text] of Object.entries(texts)) workspace.setFile(path, text);
  for (const path of workspace.wanted()) workspace.setFile(path, null);
  return workspace;
}

/** A file and all that it uses, at any remove. */
export function closureOf(texts: Texts, path: string): Texts {
  const snapshot = workspaceOf(texts).snapshot();
  return Object.fromEntries(snapshot.closure(path).map((each) => [each.path, texts[each.path]!]));
}
