// Uses the workbench as a person does, and takes pictures in four themes: out/look/*.png
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { startWebServer } from './web-server.mjs';
import { openBrowser, prepare, root, stage } from './workbench.mjs';

/** Picture, label in the theme picker, the theme's id, the workbench's class. */
const themes = [
  ['dark', 'Dark Modern', 'Dark Modern', 'vs-dark'],
  ['light', 'Light Modern', 'Light Modern', 'vs'],
  ['high-contrast', 'Dark High Contrast', 'Default High Contrast', 'hc-black'],
  ['high-contrast-light', 'Light High Contrast', 'Default High Contrast Light', 'hc-light'],
];

const pictures = join(root, 'out/look');

/** A webview is a frame in a frame; the inner one holds the extension's page. */
const webview = (page) => page.frameLocator('iframe.webview.ready').frameLocator('#active-frame');

/** Runs a command from the palette. */
async function runCommand(page, title) {
  await page.keyboard.press('F1');
  const palette = page.locator('.quick-input-widget:visible');
  await palette.locator('.monaco-list-row').first().waitFor();
  await page.keyboard.type(title);
  await palette.locator(`.monaco-list-row.focused[aria-label^="${title}"]`).waitFor();
  await page.keyboard.press('Enter');
}

/** Chooses a theme as a person does; it applies to the open page at once. */
async function pickTheme(page, label) {
  await page.locator('.editor-instance .view-line').first().click();
  await page.keyboard.press('Control+KeyK');
  await page.keyboard.press('Control+KeyT');
  const picker = page.locator('.quick-input-widget:visible');
  await picker.locator('.monaco-list-row.focused').waitFor();
  await page.keyboard.type(label);
  await picker.locator(`.monaco-list-row.focused[aria-label^="${label}"]`).waitFor();
  await page.keyboard.press('Enter');
  await picker.waitFor({ state: 'hidden' });
}

async function look(page) {
  await page.locator('.editor-instance .view-line').first().waitFor();
  await runCommand(page, 'Job Plan: Show Procedure');
  await webview(page).locator('main > *').first().waitFor();
  for (const [picture, label, theme, className] of themes) {
    await pickTheme(page, label);
    await page.locator(`.monaco-workbench.${className}`).waitFor();
    await webview(page).locator(`body[data-vscode-theme-id="${theme}"]`).waitFor();
    await page.screenshot({ path: join(pictures, `procedure-${picture}.png`) });
  }
}

prepare();
mkdirSync(pictures, { recursive: true });
const extension = await stage({});
const files = join(root, 'tests/fixtures/samples');
const server = await startWebServer({ extension, files, open: 'changeout-split.jobplan' });
const browser = await openBrowser();
const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, colorScheme: 'dark' });
page.setDefaultTimeout(30_000);
try {
  await page.goto(server.url);
  await look(page);
  console.log(`look: pictures are in ${pictures}`);
} catch (error) {
  await page.screenshot({ path: join(pictures, 'failed.png') });
  throw error;
} finally {
  await browser.close();
  await server.stop();
}
