import { hasGap } from '../../circuit/spaces';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { endName } from '../plant';
import { moveDown } from '../ways-out';

/** A crimp, choke, cap, plug or tape for an end that is no end: its joint is made. */
export const closedOnMadeJoint = defineCheck({
  name: 'closed-on-made-joint',
  severity: 'warning',
  title: 'A crimp, cap or the like where the joint is made',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['line-not-disconnected', 'flush-before-recovery'],
  meaning:
    'The step crimps, chokes, caps, plugs or tapes an end of a line that is joined to its neighbour at that moment: before it was opened, or after it was closed again. Pinching a tube off is not meant.',
  why: 'A joined tube cannot be capped; one that is squeezed with the circuit closed chokes the machine for good, or splits under its charge.',
  source: 'common practice (handbook 5.2: the ends of an open line)',
  wrong: {
    base: 'split',
    instead: [
      ['crimp each kept line at far end, leaving 1/8 in\n', ''],
      ['lock-out power\n', 'crimp suction-line at far end, leaving 1/8 in # <- here\n    lock-out power\n'],
      ['trim each kept line at far end', 'trim suction-line at far end'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { graph } = here.plan;
    const made = here
      .events('closes')
      .filter((event) => event.closure !== 'pinch')
      .filter(({ end }) => {
        const { joint } = graph.ends[end]!;
        return joint >= 0 && here.before.ends[end]!.attached && !hasGap(here.before, joint);
      });
    const [first] = made;
    if (!first) return;
    here.report({
      message: `${made.map(({ end }) => endName(graph, end)).join(' and ')} ${isOrAre(made.length)} joined here, and no open end for a ${first.closure}: disconnect first, or leave this out.`,
      slot: 'what',
      concerns: made.map(({ part }) => part),
      fixes: [
        moveDown('Do it when it is disconnected', here.entry, 'after', (later) =>
          made.every(({ end }) => hasGap(later.after, graph.ends[end]!.joint)),
        ),
      ],
    });
  },
});
