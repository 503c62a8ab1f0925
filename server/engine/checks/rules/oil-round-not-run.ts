import type { Entry } from '../../walk/walk';
import { has, timeOf, visitOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { isCompressor, repeatAround } from '../plant';
import { amount, edits } from '../support';

/** Running between two oil changes: at least a day (handbook 4.3, trade habit from memory), s. */
const between = 24 * 3600;

/** Oil changed again before the machine has carried the old oil back. */
export const oilRoundNotRun = defineCheck({
  name: 'oil-round-not-run',
  severity: 'warning',
  title: 'The machine runs less than a day between two oil changes',
  acceptable: true,
  reads: 'state',
  ground: 'memory',
  yieldsTo: ['oil-rounds-late'],
  meaning:
    'A repeated oil change has no running of at least 24 hours in its round; or the oil of one compressor is changed (or drained and filled) twice, written out one after the other, with no such running and no recovery between.',
  why: 'The old oil comes back from lines and coils over hours; a change before that swaps fresh oil for fresh, and the sample shows less than is there.',
  source: 'at least 24 h running between changes: trade habit, from memory (handbook 4.3)',
  wrong: { base: 'rack', instead: [['      run comp for 24 h\n', '      run comp for 24 min # <- here\n']] },
  right: { base: 'rack' },
  plan(whole) {
    const told = new Set<unknown>();
    const changes = oilChanges(whole.entries);
    for (const { entry } of changes) {
      const round = repeatAround(entry);
      if (!round || told.has(round) || !has(entry, 'changes-oil')) continue;
      told.add(round);
      const inRound = whole.entries.filter((each) => each.slot.within.includes(round));
      // Whoever goes away within the round leaves the machine running for a day or more.
      tell(
        whole,
        entry,
        inRound.filter((each) => each.slot.round === entry.slot.round),
      );
    }
    changes.forEach(({ entry, part }, at) => {
      const next = changes.slice(at + 1).find((each) => each.part === part);
      if (!next) return;
      const round = repeatAround(entry);
      if (round && round === repeatAround(next.entry)) return;
      const turn = whole.entries.slice(whole.entries.indexOf(entry), whole.entries.indexOf(next.entry));
      // Without oil put in between it is drained twice; after a recovery the old oil is no longer carried back.
      const filled = has(entry, 'changes-oil') ? entry : turn.find((each) => adds(whole, each, part));
      if (filled && !turn.some((each) => has(each, 'recovers'))) tell(whole, entry, [...turn, next.entry], filled);
    });
  },
});

interface OilChange {
  readonly entry: Entry;
  readonly part: number;
}

/** Steps that change a compressor's oil at one go, or drain it. */
const oilChanges = (entries: readonly Entry[]): readonly OilChange[] =>
  entries.flatMap((entry) => [
    ...entry.events.flatMap((event) => (event.type === 'changes-oil' ? [{ entry, part: event.part }] : [])),
    ...entry.after.graph.parts
      .filter((part) => isCompressor(part) && entry.after.parts[part.index]!.drained === entry.cause)
      .map((part) => ({ entry, part: part.index })),
  ]);

const adds = (whole: Whole, entry: Entry, part: number): boolean =>
  entry.after.marks.get(`add-oil ${whole.plan.graph.parts[part]!.name}`) === entry.cause ||
  entry.after.marks.get('add-oil compressor') === entry.cause;

/** Tells of a stretch from one oil change to the next in which the machine does not run for a day. */
function tell(whole: Whole, entry: Entry, turn: readonly Entry[], filled = entry): void {
  if (typeof entry.slot.step.values['per'] === 'string') return;
  if (turn.some((each) => visitOf(each) !== visitOf(entry))) return;
  const [run] = turn.filter(isRun);
  const time = turn.reduce((sum, each) => sum + ranFor(each), 0);
  if (time >= between * 0.99) return;
  whole.report(run ?? entry, {
    message: `${time > 0 ? `The machine runs ${amount(whole.plan, 'time', time)}` : 'No step runs the machine'} between two oil changes: the old oil needs at least 24 h to come back (trade habit, from memory).`,
    slot: run ? 'time' : 'what',
    related: run ? [{ cause: entry.cause, message: 'the oil is changed here' }] : [],
    fixes: run
      ? [{ title: 'Run for 24 h', edits: (mend) => edits(mend.replace(run.slot.step, 'time', 'for 24 h')) }]
      : [
          {
            title: 'Run the system for 24 h after the change',
            edits: (mend) => edits(mend.insertAfter(filled.slot.step, 'run system for 24 h')),
          },
        ],
  });
}

const isRun = (entry: Entry): boolean => entry.slot.step.word.word === 'run';
const ranFor = (entry: Entry): number =>
  isRun(entry)
    ? timeOf(entry, 'time')
    : entry.after.running
      ? Math.max(timeOf(entry, 'time'), timeOf(entry, 'after'))
      : 0;
