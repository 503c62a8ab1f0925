// A real workbench: VS Code for the browser with no server behind it, and Chromium to show it.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, rmSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import { chromium } from 'playwright-core';

export const root = dirname(dirname(import.meta.dirname));
export const cache = process.env.WORKBENCH_CACHE ?? join(homedir(), '.cache', 'jobplan-workbench');
const browserProgram = process.env.CHROMIUM ?? '/usr/bin/chromium';

/** Settings of every run: a quiet window that shows the editor and our extension. */
export const settings = {
  'workbench.startupEditor': 'none',
  'workbench.colorTheme': 'Dark Modern',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'window.autoDetectColorScheme': false,
  'editor.minimap.enabled': false,
  'editor.cursorBlinking': 'solid',
  'extensions.ignoreRecommendations': true,
  'chat.disableAIFeatures': true,
  'git.enabled': false,
  'update.mode': 'none',
  'telemetry.telemetryLevel': 'off',
};

/** Installs what is missing and builds the extension. */
export function prepare() {
  execFileSync(join(root, 'scripts/workbench/install.sh'), { stdio: 'inherit' });
  execFileSync(process.execPath, [join(root, 'scripts/build.mjs')], { stdio: 'inherit' });
}

/** Lays the extension out as it is installed, with the suite inside it: a browser looks for the tests there. */
export async function stage({ tests }) {
  const extension = join(root, 'out/workbench/extension');
  rmSync(extension, { recursive: true, force: true });
  mkdirSync(extension, { recursive: true });
  for (const name of ['package.json', 'language-configuration.json', 'syntaxes', 'dist']) {
    if (existsSync(join(root, name))) cpSync(join(root, name), join(extension, name), { recursive: true });
  }
  if (tests) {
    await build({
      entryPoints: [join(root, tests)],
      outfile: join(extension, 'tests/suite.js'),
      bundle: true,
      format: 'cjs',
      platform: 'browser',
      target: 'es2022',
      external: ['vscode'],
      logLevel: 'warning',
    });
  }
  return extension;
}

/** Opens the browser. Its sandbox needs rights that a container does not give, so it is left off. */
export function openBrowser() {
  return chromium.launch({ executablePath: browserProgram, args: ['--no-sandbox', '--disable-gpu'] });
}

/** Loads a page that runs an extension's tests; gives their exit code. `onLine` gets each console line. */
export async function runTests(page, address, onLine) {
  let exit;
  const ended = new Promise((done) => {
    exit = done;
  });
  await page.exposeFunction('codeAutomationLog', (_type, words) => onLine(words.map(String).join(' ')));
  await page.exposeFunction('codeAutomationExit', (code) => exit(code));
  page.on('crash', () => exit(70));
  await page.goto(address);
  return ended;
}
