import { isLine } from '../../circuit/kinds';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { edits } from '../support';

/** A line flushed that nobody has looked over. */
export const flushUninspected = defineCheck({
  name: 'flush-uninspected',
  severity: 'warning',
  title: 'A line is flushed without having been inspected',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['never-flush', 'line-not-disconnected', 'coil-flushed-in-place', 'flush-no-outlet'],
  meaning: 'Solvent goes into a line that no step before has inspected for low spots, traps and kinks.',
  why: 'A low spot keeps solvent that no purge of the usual length brings out; it thins the new oil or shows as a vacuum that will not hold.',
  source: 'common practice (handbook 5.2, 10.3)',
  wrong: {
    base: 'split',
    instead: [
      ['inspect each kept line for low-spots, traps, kinks, wall\n', ''],
      ['flush each kept line into container', 'flush each kept line into container # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const unseen = here
      .events('flows')
      .filter(({ medium, line }) => medium === 'solvent' && isLine(here.before.graph.parts[line]!.kind))
      .filter((flow) => here.before.parts[flow.line]!.inspected === null)
      .map((flow) => flow.line);
    if (unseen.length === 0) return;
    here.report({
      message: (say) =>
        `${say.parts(unseen)} ${isOrAre(unseen.length)} flushed unseen: inspect for low spots, traps and kinks first.`,
      slot: 'what',
      root: unseen.join(),
      concerns: unseen,
      fixes: [
        {
          title: 'Inspect before the flush',
          edits: (mend) =>
            edits(
              mend.insertBefore(
                here.entry.slot.within.find((step) => step.word.word === 'repeat') ?? here.step,
                `inspect ${unseen.map((index) => here.before.graph.parts[index]!.name).join(', ')} for low-spots, traps, kinks`,
              ),
            ),
        },
      ],
    });
  },
});
