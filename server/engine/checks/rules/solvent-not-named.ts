import { child } from '../../plan/bind';
import { solventOf } from '../../takeoff/step/flow';
import { defineCheck } from '../define';
import { edits } from '../support';

/** A flush with a solvent that nobody names. */
export const solventNotNamed = defineCheck({
  name: 'solvent-not-named',
  severity: 'warning',
  title: 'Nothing says which solvent the flush is made with',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A flush names no solvent, the plan states none, and the stock does not bring exactly one. What it dissolves, what it may touch, when it boils off, how much is needed and what the air of the room takes are all the solvent’s.',
  why: 'Whatever can is on the truck goes into the lines: it may not take the old oil up, may not suit the new refrigerant, or may burn.',
  source: 'handbook 5.2 and 5.3: amounts, purge and ventilation go by the solvent’s sheet; common practice',
  wrong: {
    base: 'split',
    instead: [
      ['  solvent shop-flush\n', ''],
      ['flush each kept line into container', 'flush each kept line into container # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { plan, entry, step } = here;
    if (!here.events('flows').some((flow) => flow.medium === 'solvent')) return;
    // A name that nobody knows is told at the name.
    if (step.values['with'] || child(plan.declaration.bound.block, 'solvent') || solventOf(plan, entry)) return;
    const known = plan.scope.names('solvent');
    here.report({
      message: `Nothing says which solvent: amount, purge, ventilation and oil go by its sheet; add "with" and its name, or state it in the plan.`,
      root: plan,
      fixes: known.map((name) => ({
        title: `Flush with ${name}`,
        edits: (mend) => edits(mend.append(step, ` with ${name}`)),
      })),
    });
  },
});
