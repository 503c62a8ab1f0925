import type { Entry } from '../../walk/walk';
import { timeOf, visitOf } from '../course';
import { defineCheck } from '../define';
import { repeatAround } from '../plant';
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
  meaning: 'A repeated oil change has no running of at least 24 hours in its round.',
  why: 'The old oil comes back from lines and coils over hours; a change before that swaps fresh oil for fresh, and the sample shows less than is there.',
  source: 'at least 24 h running between changes: trade habit, from memory (handbook 4.3)',
  wrong: { base: 'rack', instead: [['      run comp for 24 h\n', '      run comp for 24 min # <- here\n']] },
  right: { base: 'rack' },
  plan(whole) {
    const told = new Set<unknown>();
    for (const entry of whole.entries) {
      if (!entry.events.some((event) => event.type === 'changes-oil')) continue;
      const round = repeatAround(entry);
      if (!round || told.has(round)) continue;
      told.add(round);
      if (typeof entry.slot.step.values['per'] === 'string') continue;
      const inRound = whole.entries.filter((each) => each.slot.within.includes(round));
      const turn = inRound.filter((each) => each.slot.round === entry.slot.round);
      // Whoever goes away within the round leaves the machine running for a day or more.
      if (turn.some((each) => visitOf(each) !== visitOf(entry))) continue;
      const [run] = turn.filter(isRun);
      const time = turn.reduce((sum, each) => sum + ranFor(each), 0);
      if (time >= between * 0.99) continue;
      const at = run ?? entry;
      whole.report(at, {
        message: `${time > 0 ? `The machine runs ${amount(whole.plan, 'time', time)}` : 'No step runs the machine'} between two oil changes: the old oil needs at least 24 h to come back (trade habit, from memory).`,
        slot: run ? 'time' : 'what',
        related: run ? [{ cause: entry.cause, message: 'the oil is changed here' }] : [],
        fixes: run
          ? [{ title: 'Run for 24 h', edits: (mend) => edits(mend.replace(run.slot.step, 'time', 'for 24 h')) }]
          : [
              {
                title: 'Run the system for 24 h after the change',
                edits: (mend) => edits(mend.insertAfter(entry.slot.step, 'run system for 24 h')),
              },
            ],
      });
    }
  },
});

const isRun = (entry: Entry): boolean => entry.slot.step.word.word === 'run';
const ranFor = (entry: Entry): number =>
  isRun(entry)
    ? timeOf(entry, 'time')
    : entry.after.running
      ? Math.max(timeOf(entry, 'time'), timeOf(entry, 'after'))
      : 0;
