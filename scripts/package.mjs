// Packs the extension into out/jobplan.vsix. All code is bundled, so nothing of node_modules goes in.
import { execFileSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';

const root = dirname(import.meta.dirname);
const run = (...words) => execFileSync(process.execPath, words, { cwd: root, stdio: 'inherit' });

run('scripts/build.mjs');
mkdirSync(join(root, 'out'), { recursive: true });
run(
  'node_modules/@vscode/vsce/vsce',
  'package',
  '--no-dependencies',
  '--allow-missing-repository',
  '--no-rewrite-relative-links',
  '--out',
  'out/jobplan.vsix',
);
