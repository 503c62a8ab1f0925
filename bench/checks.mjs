// What all checks cost over a plan of 200 steps with two ways back, beside reading, walking and taking off the same plan,
// warm: `node bench/checks.mjs`. Rounds go one after the other, so that only ratios within a run hold.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = dirname(import.meta.dirname);
const folder = await mkdtemp(join(tmpdir(), 'checks-'));
const outfile = join(folder, 'checks.mjs');
const modules = {
  '../server/engine/checks/all': 'checks',
  '../server/engine/checks/bases': 'exampleText',
  '../server/engine/checks/check': 'check',
  '../server/engine/takeoff/take-off': 'takeOff',
  '../server/engine/walk/walk': 'walk',
  '../server/engine/workspace': 'theGrammar, Workspace',
};
const contents = Object.entries(modules)
  .map(([path, name]) => `export { ${name} } from '${path}';`)
  .join('\n');
await build({
  stdin: { contents, resolveDir: join(root, 'bench'), loader: 'ts' },
  bundle: true,
  format: 'esm',
  platform: 'node',
  outfile,
  logLevel: 'error',
});
const { check, checks, exampleText, takeOff, theGrammar, walk, Workspace } = await import(pathToFileURL(outfile).href);
await rm(folder, { recursive: true });

const talk = Array.from({ length: 138 }, (_, at) => ['photo gauge', 'notify owner', 'tag isolator'][at % 3]);
const pull = 'evacuate each open part to 1500 micron\n    break-vacuum with nitrogen to 2 psig\n    ';
const test = 'pressure-test each open part to 450 psig for 30 min';
const decay = 'decay-test each open part for 15 min, rise at most 300 micron';
const text = exampleText({
  base: 'split',
  instead: [
    ['  connect each kept', '  close-up: connect each kept'],
    ['  place new equipment', `  ${talk.join('\n    ')}\n    place new equipment`],
    ['  evacuate each open part to 500', `  ${pull.repeat(15)}last: evacuate each open part to 500`],
    [test, `${test} {\n      if-fails back to close-up, at most 2 times\n    }`],
    [decay, `${decay} {\n      if-fails back to last, at most 3 times\n    }`],
  ],
});

const path = 'bench.jobplan';
const workspace = new Workspace();
workspace.setFile(path, text);
const [{ plan }] = workspace.snapshot().plans(path);
const rounds = Number(process.argv[2] ?? 200);
const times = {
  parse: [],
  walk: [],
  takeOff: [],
  'check, all anew': [],
  'check after an edit': [],
  'an edit in all': [],
};
const timed = (name, work) => {
  // Time of the processor, not of the clock: what else runs on the machine does not count.
  const start = process.cpuUsage();
  const result = work();
  const { user, system } = process.cpuUsage(start);
  times[name].push((user + system) / 1000);
  return result;
};

/** A view as the workspace makes it, with its walk and take-off made already. */
function viewOf(walked, taken) {
  return { plan, walk: walked, takeOff: taken, findings: [], stepFindings: [], wordFindings: [] };
}

let found = 0;
// Views are made in batches and then checked, so that the rubbish of one stage is not swept up in the time of the next.
const batch = 10;
for (let round = 0; round < rounds; round += batch) {
  const views = Array.from({ length: batch }, () => {
    timed('parse', () => theGrammar().parse(text));
    const walked = timed('walk', () => walk(plan));
    return viewOf(
      walked,
      timed('takeOff', () => takeOff(plan, walked)),
    );
  });
  for (const view of views) found += timed('check, all anew', () => check(view)).length;
}
for (let round = 0; round < rounds; round++) {
  const edited = text
    .replace('for 20 min', 'for 21 min')
    .replace('length 40 ft', 'length 40 ft')
    .replace('15 min, rise', `${15 + (round % 2)} min, rise`);
  timed('an edit in all', () => {
    workspace.setFile(path, edited);
    const snapshot = workspace.snapshot();
    const [view] = snapshot.plans(path);
    void view.walk;
    void view.takeOff;
    timed('check after an edit', () => check(view));
  });
}
/** The lower quartile of the warm rounds: other work on the machine makes the upper ones longer. */
const warm = (all) => all.slice(Math.floor(all.length / 4)).sort((a, b) => a - b)[Math.floor((all.length * 3) / 16)];
const base = warm(times.walk);
console.log(
  `${plan.steps.length} steps, ${checks.length} checks, ${found / rounds} findings; lower quartile of ${rounds} rounds`,
);
for (const [name, all] of Object.entries(times))
  console.log(
    `${name.padEnd(22)} ${warm(all).toFixed(2).padStart(7)} ms ${(warm(all) / base).toFixed(2).padStart(6)} of walking`,
  );

if (process.argv.includes('--each')) {
  const { each } = await costs();
  for (const [name, cost] of each.slice(0, 20)) console.log(`${cost.toFixed(3).padStart(8)} ms ${name}`);
}

/** What each check of the whole plan costs by itself. */
async function costs() {
  const cost = new Map();
  const walked = walk(plan);
  const view = viewOf(walked, takeOff(plan, walked));
  const nothing = () => undefined;
  const whole = { view, plan, entries: walked.entries, report: nothing, reportAt: nothing, reportPart: nothing };
  for (const one of checks) {
    if (!one.plan) continue;
    const all = [];
    for (let round = 0; round < 60; round++) {
      const start = performance.now();
      one.plan(whole);
      all.push(performance.now() - start);
    }
    cost.set(one.name, warm(all));
  }
  return { each: [...cost].sort((a, b) => b[1] - a[1]) };
}
