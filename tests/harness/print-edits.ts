import { measure, type Outcome } from './measure';
import { folders } from './plans';

/**
 * Prints what the checks find of the edits of every sound plan; ends with 1 where a rate is under its floor. EDITS_SHARE: one edit
 * in so many; EDITS_PART: which of them; EDITS_SET=new: the second set of operators; EDITS_LIST: what was not found, by name.
 */
const floors = { placed: 0.96, silent: 0.96 };
const share = Number(process.env['EDITS_SHARE'] ?? 8);
const list = !['0', undefined].includes(process.env['EDITS_LIST']);
const set = process.env['EDITS_SET'] === 'new' ? 'new' : 'first';
const outcomes = [...measure(folders, share, Number(process.env['EDITS_PART'] ?? 0), set)];

const percent = (part: number, whole: number): string =>
  `${part} of ${whole} (${((100 * part) / Math.max(1, whole)).toFixed(1)} %)`;
const of = (verdict: string, some: readonly Outcome[]): readonly Outcome[] =>
  some.filter((each) => each.ruling.verdict === verdict);

console.log(
  `one edit in ${share}: ${outcomes.length}, unclear ${percent(of('unclear', outcomes).length, outcomes.length)}`,
);
let under = false;
for (const [name, part] of [
  ['open plans', outcomes.filter((each) => !each.heldOut)],
  ['kept back', outcomes.filter((each) => each.heldOut)],
] as const) {
  const harmful = of('harmful', part);
  const harmless = of('harmless', part);
  const placed = harmful.filter((each) => each.rightPlace);
  const silent = harmless.filter((each) => each.names.length === 0);
  console.log(`${name}: harmful, found at the right place ${percent(placed.length, harmful.length)}`);
  console.log(
    `${name}: harmful, found anywhere ${percent(harmful.filter((each) => each.names.length > 0).length, harmful.length)}`,
  );
  console.log(`${name}: harmless, silent ${percent(silent.length, harmless.length)}`);
  if (placed.length < floors.placed * harmful.length || silent.length < floors.silent * harmless.length) under = true;
  if (name === 'kept back' || !list) continue;
  show(
    'not found',
    harmful.filter((each) => !each.rightPlace),
  );
  show(
    'alarm',
    harmless.filter((each) => each.names.length > 0),
  );
  show('unclear', process.env['EDITS_LIST'] === 'unclear' ? of('unclear', part) : []);
}
process.exitCode = under ? 1 : 0;

function show(title: string, some: readonly Outcome[]): void {
  const key = ({ edit, ruling }: Outcome): string => `${edit.operator}: ${ruling.why}`;
  for (const group of [...new Set(some.map(key))].sort()) {
    const members = some.filter((each) => key(each) === group);
    console.log(`  ${title} (${members.length}) ${group}`);
    for (const { edit, names } of members)
      console.log(`    ${edit.plan}: ${edit.what} -> ${[...new Set(names)].join(', ')}`);
  }
}
