import type { Entry } from '../../walk/walk';
import { has } from '../course';
import { defineCheck, type WayOut } from '../define';
import { repeatAround } from '../plant';

/** Oil rounds after the old refrigerant is out. */
export const oilRoundsLate = defineCheck({
  name: 'oil-rounds-late',
  severity: 'warning',
  title: 'Oil rounds come after the old refrigerant is recovered',
  acceptable: true,
  reads: 'state',
  ground: 'memory',
  yieldsTo: ['refrigerant-not-stated', 'refrigerant-vented', 'open-under-pressure'],
  meaning:
    'A repeated oil change, or one more after the rounds of the same compressor, is made when it no longer holds refrigerant.',
  why: 'Only the old refrigerant carries the old oil back out of lines and coils; without it the rounds change the sump alone.',
  source: 'the oil rounds come before recovery: trade guides, from memory (handbook 4.3, 13.3)',
  wrong: {
    base: 'rack',
    instead: [
      [
        '    repeat until mineral at most 5 %, at least 3, at most 4 {\n      change-oil comp to POE 140 fl-oz, leaving 30 %\n      run comp for 24 h\n      sample oil\n    }\n',
        '',
      ],
      [
        '    cut-out liquid-drier',
        '    repeat until mineral at most 5 %, at least 3, at most 4 {\n      change-oil comp to POE 140 fl-oz, leaving 30 % # <- here\n      run comp for 24 h\n      sample oil\n    }\n    cut-out liquid-drier',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    // One change with the circuit empty is a fresh fill; where rounds have been made, it is one of them.
    const rounds = new Set<number>();
    for (const entry of whole.entries)
      for (const event of entry.events) {
        if (event.type !== 'changes-oil') continue;
        if (event.held.gas === 'refrigerant' && event.held.liquid) {
          if (entry.slot.round !== null) rounds.add(event.part);
          continue;
        }
        if (entry.slot.round === null && !rounds.has(event.part)) continue;
        whole.report(entry, {
          message: (say) =>
            `This oil round of ${say.part(event.part)} comes after its refrigerant is out: only that carries the old oil back; make the rounds before recovery.`,
          slot: 'what',
          root: event.part,
          fixes: earlier(entry),
          related: event.held.since ? [{ cause: event.held.since, message: 'the refrigerant went here' }] : [],
        });
      }
  },
});

/** The rounds go before the machine is shut down for the recovery. */
function earlier(entry: Entry): readonly WayOut[] {
  const repeat = repeatAround(entry);
  // Rounds without running time would only be the next mistake.
  if (!repeat?.children.some((step) => step.word.word === 'run')) return [];
  return [
    {
      title: 'Make the rounds before the recovery',
      edits: (mend) => {
        const { entries } = mend.view.walk;
        const recovery = entries.findIndex((each) => has(each, 'recovers'));
        if (recovery < 0) return [];
        const shutDown = entries
          .slice(0, recovery)
          .find((each) => each.before.power === 'on' && each.after.power !== 'on');
        return mend.move(repeat, 'before', (shutDown ?? entries[recovery]!).slot.step);
      },
    },
  ];
}
