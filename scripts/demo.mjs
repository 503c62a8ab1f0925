// Checks the example plans, prints what was found, and writes their sheets to out/demo/, with an index for a browser.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, relative } from 'node:path';
import { pathToFileURL } from 'node:url';

const root = dirname(import.meta.dirname);
const out = join(root, 'out/demo');

/** Runs a program to its end; 1 means findings, which the demonstration shows and goes on. */
function run(...words) {
  const { status, stdout } = spawnSync(process.execPath, words, { cwd: root, stdio: ['ignore', 'pipe', 'inherit'] });
  if (status !== 0 && status !== 1) throw new Error(`${words.join(' ')} ended with ${status}`);
  return stdout.toString();
}
const jobplan = (...words) => run('dist/jobplan.js', ...words);

/** The printed forms: the ending, and what `--as` calls it. */
const forms = [
  ['html', 'html'],
  ['pdf', 'pdf'],
  ['txt', 'text'],
];

const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

console.log(run('scripts/build.mjs').trim());
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });

console.log('\nWhat the check finds in examples/:\n');
const findings = jobplan('check', 'examples');
console.log(findings.trim() || 'Nothing.');

// A file with a plan in it has a sheet; standards, materials, house rules and records have none.
const files = readdirSync(join(root, 'examples'), { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.jobplan'))
  .map((entry) => join(entry.parentPath, entry.name))
  .sort();
const plans = files
  .map((file) => ({ file, title: /^plan\s+\S+\s+"([^"]*)"/m.exec(readFileSync(file, 'utf8'))?.[1] }))
  .filter(({ title }) => title !== undefined);

const rows = plans.map(({ file, title }) => {
  const name = basename(file, '.jobplan');
  for (const [ending, as] of forms) {
    const to = join(out, `${name}.${ending}`);
    jobplan('sheet', file, '--as', as, '--out', to);
    if (!existsSync(to)) throw new Error(`${to} was not written`);
  }
  const links = forms.map(([ending]) => `<a href="${encodeURIComponent(name)}.${ending}">${ending}</a>`).join(' ');
  return `<tr><td>${escaped(title)}</td><td>${escaped(relative(root, file))}</td><td>${links}</td></tr>`;
});

writeFileSync(
  join(out, 'index.html'),
  `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Example sheets</title>
<style>
body { font: 16px/1.5 system-ui, sans-serif; max-width: 60em; margin: 2em auto; padding: 0 1em; color: #111; background: #fff; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; padding: 0.4em 1em 0.4em 0; border-bottom: 1px solid #999; vertical-align: top; }
pre { white-space: pre-wrap; border: 1px solid #999; padding: 1em; }
</style>
</head>
<body>
<h1>Example sheets</h1>
<table>
<tr><th>Job</th><th>Plan</th><th>Sheet</th></tr>
${rows.join('\n')}
</table>
<h2>Findings</h2>
<pre>${escaped(findings.trim() || 'Nothing.')}</pre>
</body>
</html>
`,
);
console.log(`\n${plans.length} sheets, each as ${forms.map(([, as]) => as).join(', ')}. Open in a browser:`);
console.log(pathToFileURL(join(out, 'index.html')).href);
if (plans.length === 0) throw new Error('examples/ holds no plan');
