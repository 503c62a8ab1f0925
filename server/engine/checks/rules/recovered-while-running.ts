import type { Entry } from '../../walk/walk';
import { has } from '../course';
import { defineCheck } from '../define';
import { isCompressor } from '../plant';
import { moveDown } from '../ways-out';

/** The recovery machine draws on a circuit whose own compressor runs. */
export const recoveredWhileRunning = defineCheck({
  name: 'recovered-while-running',
  severity: 'warning',
  title: 'Refrigerant is recovered from a circuit whose compressor runs',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['recovery-beyond-section'],
  meaning:
    'The recovery takes the charge out of a section with a compressor that a step has started: it was neither stopped nor locked out since, not after a pump-down either.',
  why: 'The compressor runs hot on too little gas and draws a vacuum over its oil; a hermetic motor arcs in it, and air comes in at the first leak.',
  source: 'compressors are not run in a vacuum, stopped before recovery: common practice, no source (handbook 13.1)',
  wrong: {
    base: 'split',
    instead: [
      ['lock-out power\n', ''],
      ['  recover system to 0 inHg\n', '  start system\n    recover system to 0 inHg # <- here\n    lock-out power\n'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    let started: Entry | undefined;
    for (const entry of whole.entries) {
      const { before } = entry;
      if (has(entry, 'starts')) started = entry;
      if (!before.running || before.power !== 'on') started = undefined;
      if (!started) continue;
      for (const event of entry.events) {
        if (event.type !== 'recovers') continue;
        const runs = event.spaces
          .flatMap((space) => space.parts)
          .find((index) => isCompressor(before.graph.parts[index]!) && !before.lockedOut.has(index));
        if (runs === undefined) continue;
        whole.report(entry, {
          message: (say) =>
            `${say.part(runs)} runs while its charge is recovered, and ends in a vacuum: stop it and lock it out first.`,
          slot: 'what',
          concerns: [runs],
          related: [{ cause: started.cause, message: 'it runs since here' }],
          fixes: [
            moveDown(
              'Recover when it is locked out',
              entry,
              'after',
              ({ after }) => after.power === 'locked-out' || after.lockedOut.has(runs),
            ),
          ],
        });
      }
    }
  },
});
