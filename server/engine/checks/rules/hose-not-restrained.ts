import { defineCheck } from '../define';
import { edits } from '../support';

/** Solvent driven through a line while its hose may whip. */
export const hoseNotRestrained = defineCheck({
  name: 'hose-not-restrained',
  severity: 'information',
  title: 'Nobody makes sure that the outlet hose is tied down',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'Solvent is driven through a line with gas behind it, and no step before the first flush checks that the hose at the outlet is held. The sheet prints the caution all the same.',
  why: 'A hose that comes loose whips solvent and oil into somebody’s face.',
  source: 'hose restraint at every flush: common practice (handbook 5.2, 5.3)',
  wrong: {
    base: 'split',
    instead: [['flush each kept line into container', 'flush each kept line into container # <- here']],
  },
  right: {
    base: 'split',
    instead: [['  crimp each kept line', '  check hose-restraint\n    crimp each kept line']],
  },
  step(here) {
    if (!here.events('flows').some((flow) => flow.medium === 'solvent')) return;
    if ([...here.before.marks.keys()].some((mark) => /^(check|inspect|watch) .*hose/.test(mark))) return;
    here.report({
      message:
        'Nobody looks before this flush whether the hose at the outlet is tied down: it whips when gas follows the solvent.',
      slot: 'what',
      root: here.plan.graph,
      fixes: [
        {
          title: 'Check the hose first',
          edits: (mend) => edits(mend.insertBefore(here.step, 'check hose-restraint')),
        },
      ],
    });
  },
});
