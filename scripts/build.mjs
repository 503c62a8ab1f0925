// Bundles the client, the language server (for Node and for a web worker) and the command line into dist/.
import { chmodSync, existsSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';

const root = dirname(import.meta.dirname);
const dist = join(root, 'dist');

const common = {
  absWorkingDir: root,
  bundle: true,
  minify: true,
  sourcemap: 'external',
  legalComments: 'none',
  logLevel: 'warning',
  // Fonts of the printed sheet travel inside the bundle, so that it is one file wherever it is put.
  loader: { '.ttf': 'binary' },
};
const node = {
  ...common,
  format: 'cjs',
  platform: 'node',
  target: 'node20',
  // The PDF library asks for its own address, which only a module has.
  inject: [join(root, 'scripts/bundle-url.mjs')],
  define: { 'import.meta.url': 'bundleUrl' },
};
const web = { ...common, platform: 'browser', target: 'es2022', mainFields: ['browser', 'module', 'main'] };

/** The command line loads the printer of PDF files, which is larger than all the rest, only when one is asked for. */
const pdfApart = {
  name: 'pdf-apart',
  setup: (builds) =>
    builds.onResolve({ filter: /\/print-pdf$/ }, ({ kind }) =>
      kind === 'entry-point' ? undefined : { path: './jobplan-pdf.js', external: true },
    ),
};

/** Each bundle: the file that it begins with, where it goes, and how it is made. */
const bundles = [
  { from: 'client/extension-node.ts', to: 'client-node.cjs', how: { ...node, external: ['vscode'] } },
  { from: 'client/extension-web.ts', to: 'client-web.js', how: { ...web, format: 'cjs', external: ['vscode'] } },
  { from: 'server/editor/main-node.ts', to: 'server.js', how: node },
  // A worker's main script is loaded by itself, so it must not be wrapped for `require`.
  { from: 'server/editor/main-web.ts', to: 'server-web.js', how: { ...web, format: 'iife' } },
  {
    from: 'server/command/main.ts',
    to: 'jobplan.js',
    how: { ...node, plugins: [pdfApart], banner: { js: '#!/usr/bin/env node' } },
  },
  { from: 'server/command/print-pdf.ts', to: 'jobplan-pdf.js', how: node },
];

mkdirSync(dist, { recursive: true });
const made = bundles.filter(({ from }) => existsSync(join(root, from)));
for (const { from } of bundles) if (!existsSync(join(root, from))) console.log(`build: ${from} is not there, left out`);
await Promise.all(made.map(({ from, to, how }) => build({ ...how, entryPoints: [from], outfile: join(dist, to) })));
// What an earlier build left goes last, so that a program that is in use never misses its files.
const kept = new Set(made.flatMap(({ to }) => [to, `${to}.map`]));
for (const name of readdirSync(dist)) if (!kept.has(name)) rmSync(join(dist, name), { recursive: true });
if (existsSync(join(dist, 'jobplan.js'))) chmodSync(join(dist, 'jobplan.js'), 0o755);
console.log(`build: ${made.map(({ to }) => to).join(', ')} in dist/`);
