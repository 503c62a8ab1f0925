// Edits every sound plan in every way that the harness knows and prints how many harmful edits the checks find.
import { mkdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(import.meta.dirname);
const bundle = join(root, 'out/mutants.mjs');
mkdirSync(dirname(bundle), { recursive: true });
await build({
  entryPoints: [join(root, 'tests/harness/print.ts')],
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  platform: 'node',
  outfile: bundle,
  logLevel: 'warning',
});
process.chdir(root);
await import(pathToFileURL(bundle).href);
rmSync(bundle);
