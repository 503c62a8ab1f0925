import { defineCheck } from '../define';
import { isDrier } from '../plant';
import { moveDown, provesPart } from '../ways-out';

/** A new drier put in while lines are still to be flushed. */
export const drierBeforeFlush = defineCheck({
  name: 'drier-before-flush',
  severity: 'warning',
  title: 'The new drier is fitted before the last flush',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning: 'A new filter-drier or its cores are put in, and a line of the same circuit is flushed after that.',
  why: 'The drier stands open while the lines are worked on and is full of the air’s water before the machine runs.',
  source: 'fit it last, open under about 15 minutes: common practice (handbook 4.4, 13.1)',
  wrong: {
    base: 'split',
    instead: [
      ['    install filter-drier with nitrogen at 5 cfh\n', ''],
      [
        'crimp each kept line at far end',
        'install filter-drier with nitrogen at 5 cfh # <- here\n    disconnect liquid-line at far end\n    crimp each kept line at far end',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { graph } = whole.plan;
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'mounts') continue;
        const drier = event.parts.map((part) => graph.parts[part]!).find(isDrier);
        if (!drier) continue;
        const later = whole.entries
          .slice(at + 1)
          .find((next) =>
            next.events.some(
              (one) =>
                one.type === 'flows' && one.medium === 'solvent' && graph.parts[one.line]!.circuit === drier.circuit,
            ),
          );
        if (!later) continue;
        whole.report(entry, {
          message: (say) =>
            `${drier.name} is fitted before the flush of ${say.step(later.cause)}: it stands open meanwhile and takes up water; fit it last.`,
          slot: 'what',
          root: drier.index,
          fixes: event.parts.every((part) => isDrier(graph.parts[part]!))
            ? [
                moveDown(
                  'Fit it last, before the test',
                  entry,
                  'before',
                  (next, all) => all.indexOf(next) > all.indexOf(later) && provesPart(next, drier.index),
                ),
              ]
            : [],
          related: [{ cause: later.cause, message: 'a line is flushed here' }],
        });
      }
    });
  },
});
