// Runs the suite of tests/workbench in a real VS Code for the browser.
import { join } from 'node:path';
import { startWebServer } from './web-server.mjs';
import { openBrowser, prepare, root, runTests, stage } from './workbench.mjs';

/** Milliseconds for all of it; a workbench that does not start says nothing, so somebody must. */
const limit = 180_000;

prepare();
const extension = await stage({ tests: 'tests/workbench/suite.ts' });
const server = await startWebServer({
  extension,
  tests: 'tests/suite.js',
  files: join(root, 'tests/fixtures/samples'),
});
const browser = await openBrowser();
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
const log = [];
const late = new Promise((done) => setTimeout(done, limit, 124).unref());
const tests = runTests(page, server.url, (line) => {
  log.push(line);
  // Lines of the suite begin so; the rest is the workbench's own log.
  if (/^(ok|not ok|#|\d+ passed)/.test(line)) console.log(line);
});
const code = await Promise.race([tests, late]);
if (code !== 0) {
  await page.screenshot({ path: join(root, 'out/workbench/failed.png') }).catch(() => {});
  console.log(log.slice(-40).join('\n'));
  console.log(`workbench: failed with ${code}; the last picture is out/workbench/failed.png`);
}
await browser.close();
await server.stop();
process.exitCode = code;
