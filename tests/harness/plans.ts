import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Files, workspaceOf } from './mutate';

/** The folders of sound plans that mutants are made of. */
export const folders = ['tests/fixtures/samples', 'tests/fixtures/good', 'examples'];

export function filesOf(folder: string): Files {
  if (!existsSync(folder)) return {};
  const names = readdirSync(folder).filter((name) => name.endsWith('.jobplan'));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), 'utf8')]));
}

/** The plan files of a folder that have no finding above information as they are: a mutant's finding is then the mutant's. */
export const sound = (files: Files): readonly string[] => {
  const snapshot = workspaceOf(files).snapshot();
  return snapshot.paths.filter(
    (path) =>
      snapshot.plans(path).length > 0 && snapshot.findings(path).every((finding) => finding.severity === 'information'),
  );
};
