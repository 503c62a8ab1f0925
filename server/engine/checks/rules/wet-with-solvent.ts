import { defineCheck } from '../define';
import { dryings } from '../drying';
import { isOrAre } from '../is-are';
import { edits, inOwn } from '../support';

/** A line closed, tested, pumped on or brazed with its solvent still in it. */
export const wetWithSolvent = defineCheck({
  name: 'wet-with-solvent',
  severity: 'warning',
  title: 'A line is closed while it is wet with solvent',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['never-flush', 'line-not-disconnected', 'coil-flushed-in-place', 'flush-no-outlet'],
  meaning:
    'A line that was flushed is joined, tested or evacuated with no final purge before: only the short purges between the rounds, or none. Under a torch the finding is an error.',
  why: 'Solvent thins the oil of the new compressor and holds the vacuum up; in a flame it makes acid and poison gas.',
  source: 'common practice (handbook 5.2, 5.3)',
  wrong: {
    base: 'split',
    instead: [
      ['purge each kept line at 100 psig for 60 s into container\n', ''],
      [
        'connect each kept line at both ends with nitrogen at 5 cfh',
        'connect each kept line at both ends with nitrogen at 5 cfh # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    for (const drying of dryings(whole.view)) {
      if (drying.verdict !== 'missing') continue;
      const { closed, flushed } = drying;
      const lines = dryings(whole.view).filter((each) => each.verdict === 'missing' && each.closed === closed);
      const names = lines.map((each) => whole.plan.graph.parts[each.line]!.name).join(', ');
      whole.report(closed, {
        message: (say) =>
          `${say.parts(lines.map((each) => each.line))} ${isOrAre(lines.length)} ${drying.torch ? 'brazed' : 'closed'} still wet with the solvent of ${say.step(flushed.cause)}: no final purge has driven it out.`,
        slot: 'what',
        severity: drying.torch ? 'error' : 'warning',
        root: flushed.slot.step,
        concerns: lines.map((each) => each.line),
        related: [{ cause: flushed.cause, message: 'the solvent came in here' }],
        fixes: [
          {
            title: 'Purge after the flush',
            edits: (mend) =>
              edits(
                mend.insertAfter(
                  flushed.slot.within.find((step) => step.word.word === 'repeat') ?? flushed.slot.step,
                  `purge ${names} at ${inOwn(whole.plan, '100 psig', '700 kPa gauge')} for 60 s into container`,
                ),
              ),
          },
        ],
      });
    }
  },
});
