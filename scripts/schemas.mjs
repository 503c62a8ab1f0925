// Writes the JSON Schemas of what the command line gives out to docs/schemas/, from the shapes in its code.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(import.meta.dirname);
const folder = join(root, 'docs/schemas');
const bundle = join(root, 'out/schemas.mjs');

await build({
  absWorkingDir: root,
  entryPoints: ['server/command/shapes/published.ts'],
  outfile: bundle,
  bundle: true,
  format: 'esm',
  platform: 'node',
  logLevel: 'warning',
});
const { schemaFiles } = await import(pathToFileURL(bundle).href);
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
for (const [name, text] of schemaFiles()) writeFileSync(join(folder, name), text);
console.log(`schemas: ${[...schemaFiles().keys()].join(', ')} in docs/schemas/`);
