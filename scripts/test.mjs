// Runs every check of the repository but the workbench, the quickest first, and stops at the first kind that fails.
// The last line is always `N passed, N failed`, alone, for whoever counts.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';

const root = dirname(import.meta.dirname);
const results = join(root, 'out/vitest.json');
const bin = (name) => join(root, 'node_modules/.bin', name);

const stages = [
  ['lint', bin('biome'), ['check', '--error-on-warnings', '--max-diagnostics=20']],
  ['build', process.execPath, ['scripts/build.mjs']],
  [
    'imports',
    bin('depcruise'),
    '--config .dependency-cruiser.cjs --output-type err grammar server client tests'.split(' '),
  ],
  ['types', bin('tsc'), ['--noEmit']],
  ['tests', bin('vitest'), ['run', '--reporter=dot', '--reporter=json', `--outputFile.json=${results}`]],
];

mkdirSync(dirname(results), { recursive: true });
rmSync(results, { force: true });
// Colours are for a terminal; whoever reads a log wants the plain words.
const plain = { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' };
const env = process.stdout.isTTY ? process.env : plain;
let failedStage;
for (const [name, program, words] of stages) {
  const began = performance.now();
  const { status } = spawnSync(program, words, { cwd: root, env, stdio: 'inherit' });
  console.log(`${name}: ${status === 0 ? 'ok' : 'FAILED'} (${((performance.now() - began) / 1000).toFixed(1)} s)`);
  if (status === 0) continue;
  failedStage = name;
  break;
}

const counted = existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : undefined;
const passed = counted?.numPassedTests ?? 0;
// A stage before the tests, or a test file that could not be loaded, counts as one failure.
const failed = Math.max(counted?.numFailedTests ?? 0, failedStage === undefined ? 0 : 1);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
