// Times from a key press to its finding: in one plan of 200, 2,000 and 20,000 lines, beside a server that does nothing; and
// in a workspace of 500 jobs that follow one standard. `npm run bench`; only the ratios hold from one machine to another.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Client, median } from './client.mjs';
import makeDocument from './document.mjs';
import { jobName, jobText, makeShop, standardEdit } from './shop.mjs';

const root = dirname(import.meta.dirname);
const ours = [join(root, 'dist/server.js'), '--stdio'];
const floor = [join(root, 'bench/floor.mjs')];
const sizes = [200, 2_000, 20_000];
const edits = 40;
const warmUp = 10;
const jobs = 500;
const mark = '\u2717';

const round = (number) => (number < 10 ? number.toFixed(2) : number.toFixed(0)).padStart(8);
const errors = (diagnostics) => diagnostics.filter(({ severity }) => severity === 1);
const on = (line) => (diagnostics) => errors(diagnostics).some(({ range }) => range.start.line === line);
const notOn = (line) => (diagnostics) => !on(line)(diagnostics);

/** Types an error at each place and takes it back; gives the milliseconds of each. */
async function typing(client, uri, toggles, insertOf) {
  const times = [];
  for (let n = 0; n < warmUp + edits; n++) {
    const { line, character, insert } = toggles[(n * 7) % toggles.length];
    const start = { line, character };
    const text = insertOf(insert, n);
    const typed = await client.change(uri, { start, end: start }, text, on(line));
    const cleared = await client.change(uri, { start, end: { line, character: character + 1 } }, '', notOn(line));
    if (n >= warmUp) times.push(typed.milliseconds, cleared.milliseconds);
  }
  return times;
}

async function oneDocument(words, lines, insertOf) {
  const folder = mkdtempSync(join(tmpdir(), 'jobplan-bench-'));
  const client = new Client(words);
  try {
    await client.start(pathToFileURL(folder).href);
    const { text, toggles } = makeDocument(lines);
    const uri = pathToFileURL(join(folder, 'main.jobplan')).href;
    const opened = await client.open(uri, text);
    const times = await typing(client, uri, toggles, insertOf);
    return {
      open: opened.milliseconds,
      edit: median(times),
      memory: client.memory(),
      found: errors(opened.diagnostics).length,
    };
  } finally {
    client.stop();
    rmSync(folder, { recursive: true });
  }
}

async function manyJobs() {
  const folder = mkdtempSync(join(tmpdir(), 'jobplan-bench-'));
  const client = new Client(ours);
  try {
    makeShop(folder, jobs);
    const address = (name) => pathToFileURL(join(folder, name)).href;
    const began = performance.now();
    await client.start(pathToFileURL(folder).href);
    const job = address(jobName(7));
    await client.open(job, jobText(7));
    const loaded = (await client.quiet()) - began;
    const line = jobText(7)
      .split('\n')
      .findIndex((row) => row.includes('suction-line'));
    const toggle = { line, character: jobText(7).split('\n')[line].indexOf('suction') + 2, insert: 'qvwxyz' };
    const times = await typing(client, job, [toggle], (insert, n) => insert[n % insert.length]);
    const { name, text, range, insert } = standardEdit(folder);
    await client.open(address(name), text);
    await client.quiet();
    const before = performance.now();
    const first = await client.change(address(name), range, insert, () => true);
    const all = (await client.quiet()) - before;
    return { loaded, job: median(times), standard: first.milliseconds, all, memory: client.memory() };
  } finally {
    client.stop();
    rmSync(folder, { recursive: true });
  }
}

execFileSync(process.execPath, [join(root, 'scripts/build.mjs')], { stdio: 'inherit' });
console.log('\n   lines  open ms  edit ms  floor ms    ratio  memory MiB  errors when clean');
for (const lines of sizes) {
  const under = await oneDocument(floor, lines, () => mark);
  const own = await oneDocument(ours, lines, (insert, n) => insert[n % insert.length]);
  const columns = [own.open, own.edit, under.edit, own.edit / under.edit, own.memory].map(round).join(' ');
  console.log(`${String(lines).padStart(8)} ${columns} ${String(own.found).padStart(12)}`);
}

const shop = await manyJobs();
console.log(`\n${jobs} jobs that follow one standard, ms:`);
console.log(`${round(shop.loaded)}  start to the last finding`);
console.log(`${round(shop.job)}  key press in a job to its finding`);
console.log(`${round(shop.standard)}  key press in the standard to its findings`);
console.log(`${round(shop.all)}  key press in the standard to the last finding of all jobs`);
console.log(`${round(shop.memory)}  memory, MiB`);
