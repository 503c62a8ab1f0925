import { waysBack } from '../../takeoff/rounds';
import { defineCheck } from '../define';
import { lookedAgain } from '../looked-again';
import { brokenWays, reportOf } from '../ways-back';

/** Going back after a failed test, over steps that what stands there by then does not suit. */
export const wayBackUnsafe = defineCheck({
  name: 'way-back-unsafe',
  severity: 'error',
  title: 'The way back after a failed step leads into a hazard',
  acceptable: false,
  noFix: 'Which step to go back to, and what must be put right on the way, depends on what the failed step has shown.',
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['next-round-unsafe', ...[...lookedAgain.steps, ...lookedAgain.wholes].map((each) => each.name)],
  meaning:
    'If this step fails, the crew lets down what the test put in and goes back. At one of the steps that it then goes through again, the plant stands as that step must not meet it, though it was well the first time: refrigerant let in meanwhile, power back, a line already closed.',
  why: 'Nobody rehearses the way back; it is gone in a hurry, and the sheet is trusted.',
  source: 'common practice (handbook 2.1, 11, 13.1: the same rules hold the second time)',
  wrong: {
    base: 'split',
    instead: [
      ['  connect each kept', '  close-up: connect each kept'],
      [
        'charge system\n',
        'charge system\n  read pressure of system {\n    if-fails back to close-up, at most 2 times # <- here\n  }\n',
      ],
    ],
  },
  right: {
    base: 'split',
    instead: [
      ['  connect each kept', '  close-up: connect each kept'],
      [
        'pressure-test each open part to 450 psig for 30 min',
        'pressure-test each open part to 450 psig for 30 min {\n    if-fails back to close-up, at most 2 times\n  }',
      ],
    ],
  },
  plan(whole) {
    for (const broken of brokenWays(whole.view, waysBack(whole.entries), lookedAgain)) {
      const { way } = broken;
      whole.reportAt(
        way.bound,
        { from: way.label.from, to: way.label.to },
        reportOf(broken, way.bound, {
          when: 'When the crew goes back from here',
          than: 'the first time',
          here: 'it breaks here the second time',
        }),
        way.step.file,
      );
    }
  },
});
