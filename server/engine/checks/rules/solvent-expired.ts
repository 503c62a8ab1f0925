import { defineCheck } from '../define';
import { isPast, statementOf } from '../stock';
import { reportSolvent, secondSolvent, solventsUsed } from './solvent-does-not-suit';

/** A solvent past its date. */
export const solventExpired = defineCheck({
  name: 'solvent-expired',
  severity: 'warning',
  title: 'The solvent is past its date',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  meaning: 'On the date of the plan the solvent may no longer be used by its container.',
  why: 'It may have taken up water or broken down to acid, and goes into lines that are to stay dry.',
  source: 'the data sheet of the solvent, as the shop declares it',
  wrong: {
    base: 'split',
    file: secondSolvent,
    instead: [
      ['boils 100 degF', 'boils 100 degF\n  use-by 2027-03'],
      ['  solvent shop-flush\n', '  solvent shop-flush # <- here\n'],
    ],
  },
  right: { base: 'split', instead: [['boils 100 degF', 'boils 100 degF\n  use-by 2027-05']] },
  plan(whole) {
    for (const { solvent, entry } of solventsUsed(whole)) {
      const day = statementOf(solvent, 'use-by')?.values['day'] as string | undefined;
      if (isPast(day, whole.plan.day))
        reportSolvent(
          whole,
          entry,
          `${solvent.name} was to be used by ${day}, and the work is on ${whole.plan.day}: bring fresh solvent.`,
        );
    }
  },
});
