import { has } from '../course';
import { defineCheck, type Here, type WayOut } from '../define';
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
  meaning: 'A repeated oil change is made on a compressor that no longer holds refrigerant.',
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
  step(here) {
    if (here.entry.slot.round === null) return;
    for (const event of here.events('changes-oil')) {
      if (event.held.gas === 'refrigerant' && event.held.liquid) continue;
      here.report({
        message: (say) =>
          `This oil round of ${say.part(event.part)} comes after its refrigerant is out: only that carries the old oil back; make the rounds before recovery.`,
        slot: 'what',
        root: event.part,
        fixes: earlier(here),
        related: event.held.since ? [{ cause: event.held.since, message: 'the refrigerant went here' }] : [],
      });
    }
  },
});

/** The rounds go before the machine is shut down for the recovery. */
function earlier(here: Here): readonly WayOut[] {
  const repeat = repeatAround(here.entry);
  // Rounds without running time would only be the next mistake.
  if (!repeat?.children.some((step) => step.word.word === 'run')) return [];
  return [
    {
      title: 'Make the rounds before the recovery',
      edits: (mend) => {
        const { entries } = mend.view.walk;
        const recovery = entries.findIndex((entry) => has(entry, 'recovers'));
        if (recovery < 0) return [];
        const shutDown = entries
          .slice(0, recovery)
          .find((entry) => entry.before.power === 'on' && entry.after.power !== 'on');
        return mend.move(repeat, 'before', (shutDown ?? entries[recovery]!).slot.step);
      },
    },
  ];
}
