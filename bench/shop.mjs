// Makes a workspace: one standard, materials, house rules, and any number of jobs that follow the standard.
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const source = join(dirname(import.meta.dirname), 'tests/fixtures/samples');
const shared = ['standard-line-set-reuse.jobplan', 'house.jobplan', 'materials.jobplan'];
const standard = shared[0];

export const jobName = (n) => `job-${n}.jobplan`;

/** A job like the others, but for its name and the length of its lines. */
export function jobText(n) {
  return readFileSync(join(source, 'changeout-split.jobplan'), 'utf8')
    .replace(/^plan (\S+) "/m, `plan job-${n} "Job ${n}, `)
    .replaceAll('length 48 ft', `length ${30 + (n % 40)} ft`);
}

export function makeShop(folder, jobs) {
  mkdirSync(folder, { recursive: true });
  for (const name of shared) copyFileSync(join(source, name), join(folder, name));
  for (let n = 0; n < jobs; n++) writeFileSync(join(folder, jobName(n)), jobText(n));
}

/** A change of the standard that makes a difference to each job: the last evacuation goes to a milder level. */
export function standardEdit(folder) {
  const text = readFileSync(join(folder, standard), 'utf8');
  const lines = text.split('\n');
  const line = lines.findIndex((row) => row.includes('evacuate each open part to 500 micron'));
  const character = lines[line].indexOf('500');
  const range = { start: { line, character }, end: { line, character: character + 3 } };
  return { name: standard, text, range, insert: '900' };
}
