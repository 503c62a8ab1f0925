import type { Plant } from '../../circuit/state';
import { statedAt } from '../../steps/joints';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { edits, inOwn } from '../support';

/** What is made up with a wrench or a gasket is no brazed joint. */
const mechanical = /wrench|gasket/;

/** A brazed joint that a step makes up with a wrench. */
export const jointMadeOtherwise = defineCheck({
  name: 'joint-made-otherwise',
  severity: 'warning',
  title: 'A joint is made otherwise than the circuit states it',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The circuit states that an end of this part is brazed, and no part that it meets states a flare or a flange there; the step makes them up with a wrench or with gaskets.',
  why: 'There is nothing to turn a wrench on: the crew comes without torch, rod and nitrogen, or cuts a flare where the plan counts on a brazed joint.',
  source: 'common practice (handbook 6.3, 13.1)',
  wrong: {
    base: 'split',
    instead: [
      [
        'connect each kept line at both ends with nitrogen at 5 cfh',
        'connect each kept line at both ends with torque-wrench # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const odd = here
      .events('joins')
      .filter(
        ({ torch, with: how, ends }) => !torch && how !== null && mechanical.test(how) && brazed(here.before, ends),
      );
    const parts = odd.map(({ part }) => part);
    if (parts.length === 0) return;
    const flow = inOwn(here.plan, '5 cfh', '2.5 L/min');
    here.report({
      message: (say) =>
        `${say.parts(parts)} ${isOrAre(parts.length)} made up with ${odd[0]!.with} here, and the circuit states brazed joints: braze with nitrogen flowing, or state the joint as it is.`,
      slot: 'with',
      concerns: parts,
      related: parts.map((part) => ({ part, message: 'its joints are stated here' })),
      fixes: here.step.spans['with']
        ? [
            {
              title: `Braze with nitrogen at ${flow}`,
              edits: (mend) => edits(mend.replace(here.step, 'with', `with nitrogen at ${flow}`)),
            },
          ]
        : [],
    });
  },
});

/** Whether an end meets parts that are stated as brazed there, and none stated otherwise: the other end may have its flare. */
const brazed = ({ graph }: Plant, ends: readonly number[]): boolean =>
  ends.some((end) => {
    const stated = statedAt(graph, end);
    return stated.length > 0 && stated.every((each) => each === 'brazed');
  });
