// Writes what is made from the code: the language reference, the manual of the checks, the list of the figures and the grammar
// file by which editors colour plans. `--textmate`, `--language`, `--checks` or `--figures` writes one of them alone.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(import.meta.dirname);
const bundle = join(root, 'out/docs.mjs');
const source = `
export { vocabulary } from './server/engine/vocabulary';
export { unitWords } from './server/engine/quantity';
export { languageReference } from './server/command/docs/language';
export { checksReference } from './server/command/docs/checks';
export { chapters } from './server/command/docs/chapters';
export { figuresReference } from './server/command/docs/figures';
export { propertyErrors } from './server/command/docs/property-errors';
export { disagreements } from './server/command/docs/disagreements';
export { relations } from './server/engine/takeoff/figures';
export { textMateFile } from './server/editor/highlight/textmate';
`;

mkdirSync(dirname(bundle), { recursive: true });
await build({
  stdin: { contents: source, resolveDir: root, loader: 'ts' },
  absWorkingDir: root,
  bundle: true,
  format: 'esm',
  platform: 'node',
  outfile: bundle,
  logLevel: 'warning',
});
const {
  vocabulary,
  unitWords,
  languageReference,
  checksReference,
  chapters,
  figuresReference,
  propertyErrors,
  disagreements,
  relations,
  textMateFile,
} = await import(pathToFileURL(bundle).href);
rmSync(bundle);

const [only] = process.argv.slice(2);
const notes = (path) => (existsSync(join(root, path)) ? readFileSync(join(root, path), 'utf8') : '');
const wanted = (what) => only === undefined || only === `--${what}`;
if (wanted('language')) write('docs/language.md', languageReference(vocabulary, notes('docs/parts/language-notes.md')));
if (wanted('checks')) write('docs/checks.md', checksReference(chapters, notes('docs/parts/checks-notes.md')));
if (wanted('figures')) {
  const checks = JSON.parse(readFileSync(join(root, 'tests/fixtures/properties/checks.json'), 'utf8')).values;
  write('docs/figures.md', figuresReference(relations, propertyErrors(checks), disagreements));
}
if (wanted('textmate')) write('syntaxes/jobplan.tmLanguage.json', textMateFile(vocabulary, unitWords));

function write(path, text) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
  console.log(`docs: ${path}`);
}
