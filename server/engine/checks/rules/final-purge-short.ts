import { finalPurgeChanges } from '../../steps/flow';
import { defineCheck } from '../define';
import { changes, dryings } from '../drying';
import { amount, edits } from '../support';

/** A last purge that does not change the gas in the line often enough. */
export const finalPurgeShort = defineCheck({
  name: 'final-purge-short',
  severity: 'warning',
  title: 'The final purge is shorter than the line needs',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  yieldsTo: [
    'final-purge-weak',
    'never-flush',
    'line-not-disconnected',
    'coil-flushed-in-place',
    'flush-no-outlet',
    'flush-path-forks',
  ],
  meaning:
    'At the stated pressure and outlet the last purge changes the gas in the line fewer than ten times. Where a torch comes to the line next, the finding is an error.',
  why: 'Gas that mixes leaves a share of e to the minus n after n changes: under about ten, solvent vapour stays.',
  source:
    '5 to 10 volume changes: common practice, no source (handbook 6.3); flow through the outlet by the choked-flow law',
  wrong: {
    base: 'split',
    instead: [
      [
        'purge each kept line at 100 psig for 60 s into container',
        'purge each kept line at 100 psig for 5 s into container # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    for (const drying of dryings(whole.view)) {
      if (drying.verdict !== 'short' || !drying.purge) continue;
      const { entry, flow } = drying.purge;
      const count = flow.volumeChanges;
      const needed = count && flow.time ? Math.ceil((flow.time.low * finalPurgeChanges) / count / 5) * 5 : 60;
      const longest = dryings(whole.view)
        .filter((each) => each.purge?.entry === entry && each.verdict === 'short' && each.purge.flow.volumeChanges)
        .reduce(
          (most, each) =>
            Math.max(
              most,
              Math.ceil(((flow.time?.low ?? 0) * finalPurgeChanges) / each.purge!.flow.volumeChanges! / 5) * 5,
            ),
          needed,
        );
      const time = amount(whole.plan, 'time', longest, 's');
      whole.report(entry, {
        message: (say) =>
          `The last purge of ${say.part(drying.line)} gives ${count === null ? 'no known number of gas changes' : `${changes(count)} of its gas`}; ten take the solvent out, about ${time} at this setting (5 to 10 changes: common practice, no source).`,
        slot: entry.slot.step.spans['time'] ? 'time' : 'what',
        severity: drying.torch ? 'error' : 'warning',
        root: entry.slot.step,
        concerns: [drying.line],
        related: [{ cause: drying.closed.cause, message: 'it is closed here' }],
        fixes: [
          {
            title: `Purge for ${time}`,
            edits: (mend) =>
              edits(
                entry.slot.step.spans['time']
                  ? mend.replace(entry.slot.step, 'time', `for ${time}`)
                  : mend.append(entry.slot.step, ` for ${time}`),
              ),
          },
        ],
      });
    }
  },
});
