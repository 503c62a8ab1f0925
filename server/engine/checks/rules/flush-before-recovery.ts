import { spacesOf } from '../../circuit/spaces';
import { defineCheck } from '../define';
import { heldBy, refrigerantShows } from '../plant';
import { edits, gauge, underLaw } from '../support';

/** Solvent or nitrogen sent into a line that is still full of refrigerant. */
export const flushBeforeRecovery = defineCheck({
  name: 'flush-before-recovery',
  severity: 'error',
  title: 'A line is flushed or blown out before its refrigerant is recovered',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  yieldsTo: ['open-under-pressure', 'section-not-recovered', 'recovery-too-shallow'],
  meaning: 'Solvent or nitrogen goes into a line that still holds refrigerant above the atmosphere.',
  why: 'The charge comes out at the far end with the solvent: a release, and a jet that nobody expects.',
  source: '40 CFR 82.154 (handbook 2.2)',
  wrong: {
    base: 'split',
    instead: [
      [
        'recover system to 0 inHg\n',
        'blow-out suction-line at 50 psig for 30 s into container # <- here\n  recover system to 0 inHg\n',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    for (const flow of here.events('flows')) {
      const space = spacesOf(here.before, flow.line)[0];
      if (!space) continue;
      const held = heldBy(here.before, space);
      if (!refrigerantShows(here.before, held)) continue;
      here.report({
        message: (say) =>
          `${say.part(flow.line)} still holds ${held.refrigerant ?? 'refrigerant'} at up to ${gauge(here.plan, held.high)}: recover it before ${flow.medium} goes in${underLaw(here.plan, 'opening', held.refrigerant)}.`,
        slot: 'what',
        root: held.since ?? here.before.graph,
        concerns: space.parts,
        fixes: [
          {
            title: 'Recover, prove zero and disconnect the line before this step',
            edits: (mend) =>
              edits(
                mend.insertBefore(
                  here.step,
                  'recover system to 0 inHg',
                  'prove-zero system',
                  `disconnect ${here.plan.graph.parts[flow.line]!.name} at both ends`,
                ),
              ),
          },
        ],
      });
    }
  },
});
