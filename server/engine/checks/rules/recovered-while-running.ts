import { defineCheck } from '../define';
import { isCompressor } from '../plant';
import { edits } from '../support';

/** The recovery machine draws on a circuit whose own compressor runs. */
export const recoveredWhileRunning = defineCheck({
  name: 'recovered-while-running',
  severity: 'warning',
  title: 'Refrigerant is recovered from a circuit whose compressor runs',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The recovery takes the charge out of a section with a compressor that runs: it was neither stopped nor locked out, and no pump-down asks for it.',
  why: 'The compressor runs hot on too little gas and draws a vacuum over its oil; a hermetic motor arcs in it, and air comes in at the first leak.',
  source: 'compressors are not run in a vacuum, stopped before recovery: common practice, no source (handbook 13.1)',
  wrong: {
    base: 'split',
    instead: [
      ['lock-out power\n', ''],
      ['  recover system', '  recover system # <- here'],
      ['prove-zero system\n', 'prove-zero system\n    lock-out power\n'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { before } = here;
    if (!before.running || before.power !== 'on') return;
    for (const event of here.events('recovers')) {
      const runs = event.spaces
        .flatMap((space) => space.parts)
        .find((index) => isCompressor(before.graph.parts[index]!) && !before.lockedOut.has(index));
      if (runs === undefined) continue;
      here.report({
        message: (say) =>
          `${say.part(runs)} runs while its charge is recovered, and ends in a vacuum: stop it and lock it out first.`,
        slot: 'what',
        concerns: [runs],
        fixes: [
          {
            title: 'Lock out before this step',
            edits: (mend) => edits(mend.insertBefore(here.step, 'lock-out power')),
          },
        ],
      });
      return;
    }
  },
});
