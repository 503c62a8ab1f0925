import { defineCheck } from '../define';
import { dryings } from '../drying';
import { edits, gauge, inOwn } from '../support';

/** A last purge at less pressure than the trade drives the last solvent out with. */
export const finalPurgeWeak = defineCheck({
  name: 'final-purge-weak',
  severity: 'warning',
  title: 'The final purge is below the common 100 psig',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  yieldsTo: ['never-flush', 'line-not-disconnected', 'coil-flushed-in-place', 'flush-no-outlet'],
  meaning:
    'The last purge before the line is closed is set below 100 psig, with no cited sheet and no line rating that asks for less, and it is no half-hour drying purge; or a purge before it blew harder, as if the two were exchanged. Where a torch comes to the line next, the finding is an error.',
  why: 'The last film of solvent stays on the wall; it thins the new oil, holds the vacuum up, and makes acid under a torch.',
  source:
    'final blow-out near 100 psig: common practice, no source; drying purge of 30 minutes: public service manuals (handbook 5.2)',
  wrong: {
    base: 'split',
    instead: [
      [
        'purge each kept line at 100 psig for 60 s into container',
        'purge each kept line at 40 psig for 60 s into container # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const usual = inOwn(whole.plan, '100 psig', '700 kPa gauge');
    for (const drying of dryings(whole.view)) {
      if (drying.verdict !== 'weak' || !drying.purge) continue;
      const { entry, flow } = drying.purge;
      const harder = drying.harder?.level ?? null;
      whole.report(entry, {
        message: (say) =>
          `The last purge of ${say.part(drying.line)} is at ${flow.level === null ? 'no stated pressure' : gauge(whole.plan, flow.level)}, below the common ${usual}${harder === null ? `; it is closed still wet at ${say.step(drying.closed.cause)}` : `, and those before it at ${gauge(whole.plan, harder)}: the two look exchanged`}: purge at ${usual} (common practice, no source), or cite the sheet that asks for less.`,
        slot: entry.slot.step.spans['level'] ? 'level' : 'what',
        severity: drying.torch && harder === null ? 'error' : 'warning',
        root: entry.slot.step,
        concerns: [drying.line],
        related: [{ cause: drying.closed.cause, message: 'it is closed here' }],
        fixes: [
          {
            title: `Purge at ${usual}`,
            edits: (mend) =>
              edits(
                entry.slot.step.spans['level']
                  ? mend.replace(entry.slot.step, 'level', `at ${usual}`)
                  : mend.append(entry.slot.step, ` at ${usual}`),
              ),
          },
        ],
      });
    }
  },
});
