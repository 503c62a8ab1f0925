import { hasGap } from '../../circuit/spaces';
import type { Step } from '../../plan/step';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { endName, isJoined } from '../plant';
import { disconnectBefore } from '../ways-out';

/** Solvent sent into a line that still hangs in the circuit at one end or both. */
export const lineNotDisconnected = defineCheck({
  name: 'line-not-disconnected',
  severity: 'error',
  title: 'A line is flushed before it is disconnected at both ends',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['flush-before-recovery'],
  meaning:
    'A flush asks for a line that is still joined to the circuit at the end that the solvent goes in at, so that the path is not the line alone.',
  why: 'Solvent goes where nobody wants it: into the compressor, a valve or a coil, and does not come out again.',
  source: 'common practice (handbook 5.1, 5.2)',
  wrong: {
    base: 'split',
    instead: [
      [
        'disconnect each kept line at both ends',
        'disconnect liquid-line at both ends\n    disconnect suction-line at far end',
      ],
      ['    remove old equipment\n', ''],
      ['flush each kept line into container', 'flush each kept line into container # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const plant = here.before;
    const { graph } = plant;
    for (const flow of here.events('flows')) {
      if (flow.medium !== 'solvent' || plant.parts[flow.line]!.mounted === 'none') continue;
      // Nitrogen alone may go on through what hangs there, as long as it gets in and out: a sealed coil with its tube.
      if (flow.purpose === 'blow-out' && flow.inletOpen && flow.outlets.length > 0) continue;
      const part = graph.parts[flow.line]!;
      const joined = part.ends.filter((end) => {
        const { joint } = graph.ends[end]!;
        return joint >= 0 && !hasGap(plant, joint);
      });
      if (!joined.includes(flow.inlet)) continue;
      const into = flow.reached.filter((index) => index !== flow.line);
      here.report({
        message: (say) =>
          `${say.part(flow.line)} is still joined at ${joined.map((end) => endName(graph, end)).join(' and ')}${into.length > 0 ? `, so the ${flow.medium} also gets to ${say.parts(into)}` : ''}: disconnect it at both ends first.`,
        slot: 'what',
        root: `${flow.line}`,
        concerns: [flow.line, ...into],
        fixes: [
          {
            title: `Disconnect ${part.name} at both ends before this step`,
            // A blow-out before the flush wants it open, too.
            edits: (mend) =>
              disconnectBefore(mend, flow.line, firstThrough(mend.view.walk.entries, flow.line) ?? here.step),
          },
        ],
      });
    }
  },
});

/** The first step that sends anything through a line while both of its ends are joined. */
const firstThrough = (entries: readonly Entry[], line: number): Step | undefined =>
  entries.find(({ before, events }) =>
    events.some(
      (event) =>
        event.type === 'flows' &&
        event.line === line &&
        before.graph.parts[line]!.ends.every((end) => isJoined(before, end)),
    ),
  )?.slot.step;
