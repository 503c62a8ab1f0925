import { child, children } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import type { Name } from '../../plan/term';
import { defineCheck } from '../define';

/** The standard that the examples of this group follow. */
export const exampleStandard = `standard short-way "Short way" {
  revision 4
  applies-to repair
  needs test-pressure pressure

  steps {
    survey: survey system
    look: leak-check system
    label: label system
  }
}`;

/** The job that follows it: nothing is opened, so that nothing else is to be found. */
export const exampleJob = `kind repair
system {
  refrigerant R-454B
  oil POE
}
circuit {
  compressor kept
  condenser kept
  filter-drier kept
  expansion-valve kept
  evaporator kept
}
`;

/** What a standard asks of the job and the job does not state. It reads statements: there is no state to a missing one. */
export const parameterMissing = defineCheck({
  name: 'parameter-missing',
  severity: 'error',
  title: 'The job does not state what its standard needs',
  acceptable: false,
  noFix: "The figure is the job's own, from a plate or a sheet, and stands nowhere in the plan.",
  reads: 'words',
  ground: 'practice',
  meaning: 'The standard says `needs …`, and the plan that follows it does not say what.',
  why: 'Steps that rest on it have no figure: the test has no pressure, the flush no solvent.',
  source: 'how plans are read',
  wrong: {
    base: 'split',
    file: exampleStandard,
    plan: `${exampleJob}follows short-way revision 4 # <- here`,
    instead: [['  test-pressure 450 psig\n', '']],
  },
  right: { base: 'split', file: exampleStandard, plan: `${exampleJob}follows short-way revision 4` },
  plan(whole) {
    const { plan } = whole;
    if (!plan.standard) return;
    const { block } = plan.declaration.bound;
    const follows = child(block, 'follows');
    if (!follows) return;
    for (const need of children(plan.standard.bound.block, 'needs')) {
      const what = need.values['what'] as Name | undefined;
      if (
        !what ||
        child(block, what.text) ||
        child(child(block, 'system')?.block ?? [], what.text) ||
        child(child(block, 'site')?.block ?? [], what.text)
      )
        continue;
      whole.reportAt(follows, follows.spans['standard'] ?? wordSpan(follows), {
        message: `"${plan.standard.name}" needs the job to state ${what.text}, and it does not: add a line "${what.text} …" to the plan.`,
        root: what.text,
        related: [{ bound: need, file: plan.standard.file, message: 'needed here' }],
      });
    }
  },
});
