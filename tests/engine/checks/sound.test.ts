import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Workspace } from '../../../server/engine/workspace';

/** Sound plans: whatever the checks find in them above information is a false alarm. */
const folders = ['tests/fixtures/samples', 'tests/fixtures/good', 'examples'];

const files = (folder: string): string[] =>
  !existsSync(folder)
    ? []
    : readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
        entry.isDirectory()
          ? files(join(folder, entry.name))
          : entry.name.endsWith('.jobplan')
            ? [join(folder, entry.name)]
            : [],
      );

describe.each(folders.filter((folder) => files(folder).length > 0))('%s', (folder) => {
  const workspace = new Workspace();
  const paths = files(folder).map((path) => relative(folder, path));
  for (const path of paths) workspace.setFile(path, readFileSync(join(folder, path), 'utf8'));
  const snapshot = workspace.snapshot();
  it.each(paths)('%s has no finding above information', (path) => {
    const found = snapshot
      .findings(path)
      .filter((finding) => finding.severity !== 'information')
      .map((finding) => `${finding.name}: ${finding.message}`);
    expect(found).toEqual([]);
  });
});
