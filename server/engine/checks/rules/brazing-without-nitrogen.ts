import { isUnread } from '../../plan/step';
import { brazingFlow } from '../../reference/nitrogen-practice';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { edits, inOwn } from '../support';

/** A joint brazed with no nitrogen through it. */
export const brazingWithoutNitrogen = defineCheck({
  name: 'brazing-without-nitrogen',
  severity: 'warning',
  title: 'Brazing without flowing nitrogen',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  meaning:
    'A torch is at a joint of this step, by the kind of joint that the circuit states, and no nitrogen flows through the tube.',
  why: 'Oxide scale forms inside the hot tube, comes off with the oil of the new machine and plugs its screens and valves.',
  source: 'federal guide specification 15652A and public service manuals (handbook 6.3)',
  wrong: {
    base: 'split',
    instead: [
      ['connect each kept line at both ends with nitrogen at 5 cfh', 'connect each kept line at both ends # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (isUnread(here.step, 'nitrogen')) return;
    const bare = here.events('joins').filter((event) => event.torch && event.nitrogen === null);
    const [first] = bare;
    if (!first) return;
    const parts = bare.map((event) => event.part);
    here.report({
      message: (say) =>
        `${say.parts(parts)} ${isOrAre(parts.length)} brazed here with no nitrogen through the tube: let ${inOwn(here.plan, '2 to 10 cfh', '1 to 5 L/min')} flow (${brazingFlow.source}), or state a joint that needs no torch.`,
      fixes: [
        {
          title: `Let nitrogen flow at ${inOwn(here.plan, '5 cfh', '2.5 L/min')}`,
          edits: (mend) => edits(mend.append(here.step, ` with nitrogen at ${inOwn(here.plan, '5 cfh', '2.5 L/min')}`)),
        },
      ],
    });
  },
});
