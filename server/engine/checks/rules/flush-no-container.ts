import { isCylinder } from '../../plan/cylinders';
import type { Name } from '../../plan/term';
import { defineCheck } from '../define';
import { edits, underLaw } from '../support';
import { writeAt } from '../ways-out';

/** Solvent that nothing catches at the outlet. */
export const flushNoContainer = defineCheck({
  name: 'flush-no-container',
  severity: 'error',
  title: 'Nothing catches the solvent at the outlet',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'A flush, or a purge while the line still holds solvent, names no container at the outlet: each purge needs one until the line is dry. Or it blows solvent or nitrogen into a recovery cylinder.',
  why: 'Solvent with oil runs over floor, roof and people; spent solvent is waste that has to be caught and kept apart from used oil.',
  source:
    '40 CFR 279.10, 261.31 on spent solvent and used oil (handbook 5.3); container at the outlet: common practice',
  wrong: {
    base: 'split',
    instead: [['flush each kept line into container', 'flush each kept line # <- here']],
  },
  right: { base: 'split' },
  step(here) {
    const into = here.step.values['into'] as Name | undefined;
    if (into && isCylinder(here.plan, into.text) && here.events('flows').length > 0) {
      here.report({
        message: `${into.text} is a recovery cylinder: solvent and nitrogen spoil the refrigerant in it and drive its pressure up until its relief lifts; blow into an open container.`,
        slot: 'into',
        fixes: writeAt(here.step, into, 'container'),
      });
      return;
    }
    const loose = here
      .events('flows')
      .filter((flow) => !flow.container && (flow.medium === 'solvent' || here.before.parts[flow.line]!.wet));
    if (loose.length === 0) return;
    here.report({
      message: (say) =>
        `Solvent comes out of ${say.parts(loose.map((flow) => flow.line))} and nothing catches it: name a container at the outlet${underLaw(here.plan, 'waste')}.`,
      slot: 'what',
      fixes: [{ title: 'Catch it in a container', edits: (mend) => edits(mend.append(here.step, ' into container')) }],
    });
  },
});
