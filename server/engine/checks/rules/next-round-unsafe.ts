import { wordSpan } from '../../plan/gather';
import { furtherRounds } from '../../takeoff/rounds';
import { defineCheck } from '../define';
import { lookedAgain } from '../looked-again';
import { brokenWays, reportOf } from '../ways-back';

/** A round more of a repeat, over steps that what stands there by then does not suit. */
export const nextRoundUnsafe = defineCheck({
  name: 'next-round-unsafe',
  severity: 'error',
  title: 'A further round of a repeat leads into a hazard',
  acceptable: false,
  noFix: 'What the steps of the repeat must do otherwise the second time depends on what they are there for.',
  reads: 'state',
  ground: 'practice',
  yieldsTo: [...lookedAgain.steps, ...lookedAgain.wholes].map((each) => each.name),
  meaning:
    'A repeat may go on after the rounds that it takes at least. In one round more, or in what follows it, a step finds the plant as it must not meet it, though all was well the round before: a line that was closed at the end of the round, refrigerant that was let in, power that is back.',
  why: 'The round that is gone through when the first did not suffice is the one that nobody thought of when the plan was written.',
  source: 'common practice (handbook 5.2, 13.1: the same rules hold in every round)',
  wrong: {
    base: 'split',
    instead: [
      ['repeat until clear, at least 2, at most 4 {', 'repeat until clear, at least 1, at most 4 { # <- here'],
      ['for 15 s into container\n', 'for 15 s into container\n    cap each kept line at both ends\n'],
      ['  purge each kept line at 100 psig', '  uncap each kept line at both ends\n  purge each kept line at 100 psig'],
    ],
  },
  right: {
    base: 'split',
    instead: [['repeat until clear, at least 2, at most 4 {', 'repeat until clear, at least 1, at most 4 {']],
  },
  plan(whole) {
    for (const broken of brokenWays(whole.view, furtherRounds(whole.entries), lookedAgain)) {
      const { way } = broken;
      whole.reportAt(
        way.repeat.bound,
        wordSpan(way.repeat.bound),
        reportOf(broken, way.repeat, {
          when: 'In a further round of this',
          than: 'before',
          here: 'it breaks here in a further round',
        }),
        way.repeat.file,
      );
    }
  },
});
