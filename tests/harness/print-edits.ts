import { editsOf } from './edits';
import { measure, type Outcome } from './measure';
import { filesOf, folders, sound } from './plans';

/** Prints what the checks find of the edits of every sound plan; ends with 1 where a rate is under its floor. */
const floors = { found: 0.9, silent: 0.9 };
const share = Number(process.env['EDITS_SHARE'] ?? 4);
const showHeldOut = process.env['EDITS_HELD_OUT'] === 'list';

const counts = { harmful: 0, harmless: 0, unclear: 0 };
for (const folder of folders) {
  const files = filesOf(folder);
  for (const path of sound(files)) for (const edit of editsOf(path, files[path]!)) counts[edit.ruling.verdict]++;
}
const all = counts.harmful + counts.harmless + counts.unclear;
console.log(
  `edits: ${all}, unclear ${((100 * counts.unclear) / all).toFixed(1)} %; one in ${share} of the others is run`,
);

const outcomes = measure(folders, share);
const percent = (part: number, whole: number): string =>
  `${part} of ${whole} (${((100 * part) / Math.max(1, whole)).toFixed(1)} %)`;
let under = false;
for (const [name, part] of [
  ['open part', outcomes.filter((each) => !each.heldOut)],
  ['kept back', outcomes.filter((each) => each.heldOut)],
] as const) {
  const harmful = part.filter((each) => each.edit.ruling.verdict === 'harmful');
  const harmless = part.filter((each) => each.edit.ruling.verdict === 'harmless');
  const found = harmful.filter((each) => each.names.length > 0);
  const placed = harmful.filter((each) => each.rightPlace);
  const silent = harmless.filter((each) => each.names.length === 0);
  console.log(`${name}: harmful, found at the right place ${percent(placed.length, harmful.length)}`);
  console.log(`${name}: harmful, found anywhere ${percent(found.length, harmful.length)}`);
  console.log(`${name}: harmless, silent ${percent(silent.length, harmless.length)}`);
  if (placed.length < floors.found * harmful.length || silent.length < floors.silent * harmless.length) under = true;
  if (name === 'kept back' && !showHeldOut) continue;
  list(
    'not found',
    harmful.filter((each) => !each.rightPlace),
  );
  list(
    'alarm',
    harmless.filter((each) => each.names.length > 0),
  );
}
process.exitCode = under ? 1 : 0;

function list(title: string, some: readonly Outcome[]): void {
  const key = ({ edit }: Outcome): string => `${edit.operator}: ${edit.ruling.why}`;
  for (const group of [...new Set(some.map(key))].sort()) {
    const members = some.filter((each) => key(each) === group);
    console.log(`  ${title} (${members.length}) ${group}`);
    for (const { edit, names } of members)
      console.log(`    ${edit.file}: ${edit.what} -> ${[...new Set(names)].join(', ')}`);
  }
}
