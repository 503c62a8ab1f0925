// Uses the workbench as a person does, and takes pictures in four themes: out/look/*.png
import { mkdirSync, readFileSync } from 'node:fs';
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
const files = join(root, 'tests/fixtures/samples');
const plan = readFileSync(join(files, 'changeout-split.jobplan'), 'utf8');

/** A webview is a frame in a frame; the inner one holds the extension's page. */
const webview = (page) => page.frameLocator('iframe.webview.ready').frameLocator('#active-frame');

/** Runs a command from the palette. */
async function runCommand(page, title) {
  const palette = page.locator('.quick-input-widget:visible');
  const row = palette.locator(`.monaco-list-row.focused[aria-label^="${title}"]`);
  // The palette closes when something else of the page takes the focus while it opens; then it is asked for again.
  for (let tries = 1; ; tries++) {
    try {
      await page.keyboard.press('F1');
      await palette.locator('input').first().fill(`>${title}`, { timeout: 5000 });
      await row.waitFor({ timeout: 5000 });
      break;
    } catch (error) {
      if (tries === 4) throw error;
    }
  }
  await page.keyboard.press('Enter');
}

/** Chooses a theme as a person does; it applies to the open page at once. */
async function pickTheme(page, label) {
  await page.keyboard.press('Control+Digit1');
  await page.keyboard.press('Control+KeyK');
  await page.keyboard.press('Control+KeyT');
  const picker = page.locator('.quick-input-widget:visible');
  await picker.locator('.monaco-list-row.focused').waitFor();
  await page.keyboard.type(label);
  await picker.locator(`.monaco-list-row.focused[aria-label^="${label}"]`).waitFor();
  await page.keyboard.press('Enter');
  await picker.waitFor({ state: 'hidden' });
}

/** Puts the cursor behind a text of the open plan. */
async function goTo(page, text) {
  const before = plan.slice(0, plan.indexOf(text) + text.length).split('\n');
  await page.mouse.move(5, 5);
  await page.keyboard.press('Control+Digit1');
  const input = page.locator('.quick-input-widget:visible input').first();
  for (let tries = 1; ; tries++) {
    try {
      await page.keyboard.press('Control+KeyG');
      await input.fill(`:${before.length}:${before.at(-1).length + 1}`, { timeout: 5000 });
      break;
    } catch (error) {
      if (tries === 4) throw error;
    }
  }
  await page.keyboard.press('Enter');
  await input.waitFor({ state: 'hidden' });
}

/** The word of the open plan on the screen, the first of them. */
const word = (page, line, text) =>
  page.locator('.editor-instance .view-line', { hasText: line }).first().getByText(text, { exact: false }).last();

/** The circuit at the cursor in place of the list of files, or the other way round. */
async function togglePanes(page) {
  for (const title of ['Circuit at the Cursor', 'folder'])
    await page.locator('.pane-header', { hasText: title }).first().click();
}

async function picture(page, name) {
  await page.screenshot({ path: join(pictures, `${name}.png`) });
}

async function look(page) {
  await page.locator('.editor-instance .view-line').first().waitFor();
  await page.getByText('fl-oz solvent').first().waitFor();
  await goTo(page, 'Rain is forecast');
  await page.getByText('scf nitrogen').first().waitFor();
  await picture(page, 'hints');

  await word(page, 'drain', 'suction-line').hover();
  await page.locator('.monaco-hover:visible', { hasText: 'since step' }).first().waitFor();
  await picture(page, 'hover-part');
  await word(page, 'break-vacuum', 'break-vacuum').hover();
  await page.locator('.monaco-hover:visible', { hasText: 'Nitrogen to fill a section' }).first().waitFor();
  await picture(page, 'hover-step');

  await goTo(page, '2 psig for 20 min');
  await togglePanes(page);
  await page.locator('.pane-body .monaco-list-row', { hasText: 'suction-line' }).first().waitFor();
  await page.mouse.move(900, 780);
  await page.waitForTimeout(500);
  await picture(page, 'circuit');
  await togglePanes(page);

  await goTo(page, '1500 micron');
  await page.keyboard.press('End');
  await page.keyboard.press('Enter');
  await page.keyboard.type('pur', { delay: 60 });
  const purge = page.locator('.suggest-widget.visible .monaco-list-row', { hasText: 'purge' }).first();
  await purge.waitFor({ timeout: 8000 }).catch(() => page.keyboard.press('Control+Space'));
  await purge.waitFor();
  await page.keyboard.press('Control+Space');
  await page.locator('.suggest-details-container, .suggest-details').first().waitFor();
  await picture(page, 'completion');
  await page.keyboard.press('Escape');
  await page.keyboard.type('ge liquid-lin at 100 psi');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await runCommand(page, 'View: Toggle Problems');
  await page.locator('.markers-panel .monaco-list-row').nth(2).waitFor();
  await picture(page, 'problems');
  await runCommand(page, 'View: Toggle Problems');
  await page.locator('.editor-instance .view-line', { hasText: 'liquid-lin at' }).click();
  for (let k = 0; k < 6; k++) await page.keyboard.press('Control+KeyZ');

  await runCommand(page, 'Job Plan: Show Procedure');
  await webview(page).locator('main > *').first().waitFor();
  for (const [name, label, theme, className] of themes) {
    await pickTheme(page, label);
    await page.locator(`.monaco-workbench.${className}`).waitFor();
    await webview(page).locator(`body[data-vscode-theme-id="${theme}"]`).waitFor();
    await goTo(page, 'Rain is forecast');
    await page.getByText('scf nitrogen').first().waitFor();
    await picture(page, `procedure-${name}`);
    await goTo(page, '2 psig for 20 min');
    await togglePanes(page);
    await page.locator('.pane-body .monaco-list-row', { hasText: 'suction-line' }).first().waitFor();
    await picture(page, `circuit-${name}`);
    await togglePanes(page);
  }
}

prepare();
mkdirSync(pictures, { recursive: true });
const extension = await stage({});
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
