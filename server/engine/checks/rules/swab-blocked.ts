import { defineCheck } from '../define';
import { endName } from '../plant';
import { edits } from '../support';

/** A swab that cannot be pulled through. */
export const swabBlocked = defineCheck({
  name: 'swab-blocked',
  severity: 'warning',
  title: 'A swab does not get through the line',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['flush-before-recovery', 'line-not-disconnected', 'flush-no-outlet'],
  meaning:
    'Swabs are pulled through a line that is still joined at one end, or that a cap, a plug or a pinch closes there.',
  why: 'The string stays in the tube, or half the line is never wiped.',
  source: 'common practice (handbook 5.2)',
  wrong: {
    base: 'split',
    instead: [
      [
        'crimp each kept line at far end, leaving 1/8 in\n',
        'cap suction-line at far end\n    pull-swab suction-line until clean # <- here\n    crimp each kept line at far end, leaving 1/8 in\n',
      ],
    ],
  },
  right: {
    base: 'split',
    instead: [
      [
        'crimp each kept line at far end, leaving 1/8 in\n',
        'pull-swab suction-line until clean\n    crimp each kept line at far end, leaving 1/8 in\n',
      ],
    ],
  },
  step(here) {
    const blocked = here.events('swabs').flatMap((event) => event.blocked);
    if (blocked.length === 0) return;
    const { graph } = here.plan;
    const closed = blocked.filter((end) => here.before.ends[end]!.closure !== null);
    const names = [...new Set(blocked.map((end) => graph.parts[graph.ends[end]!.part]!.name))];
    here.report({
      message: `No swab gets through ${blocked
        .map((end) => {
          const closure = here.before.ends[end]!.closure;
          return `${endName(graph, end)}, which is ${closure ? `closed by a ${closure.kind}` : 'still joined'}`;
        })
        .join(', nor ')}: open both ends first.`,
      slot: 'what',
      root: here.step,
      concerns: blocked.map((end) => graph.ends[end]!.part),
      related: closed.map((end) => ({ cause: here.before.ends[end]!.closure!.by, message: 'it was closed here' })),
      fixes:
        closed.length === blocked.length && closed.every((end) => here.before.ends[end]!.closure!.kind === 'cap')
          ? [
              {
                title: 'Take the caps off before this step',
                edits: (mend) => edits(mend.insertBefore(here.step, `uncap ${names.join(', ')} at both ends`)),
              },
            ]
          : [],
    });
  },
});
