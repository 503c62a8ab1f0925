import { hasGap } from '../../circuit/spaces';
import { defineCheck } from '../define';
import { endName } from '../plant';
import { edits } from '../support';

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
    'A flush, purge or blow-out asks for a line that is still joined to the circuit at one end or at both, so that the path is not the line alone.',
  why: 'Solvent goes where nobody wants it: into the compressor, a valve or a coil, and does not come out again.',
  source: 'common practice (handbook 5.1, 5.2)',
  wrong: {
    base: 'split',
    instead: [
      ['disconnect each kept line at both ends', 'disconnect each kept line at far end'],
      ['remove old equipment\n', ''],
      [
        'blow-out each kept line',
        'remove old equipment\n  connect suction-line at near end\n  blow-out each kept line',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const plant = here.before;
    const { graph } = plant;
    for (const flow of here.events('flows')) {
      const part = graph.parts[flow.line]!;
      const joined = part.ends.filter((end) => {
        const { joint } = graph.ends[end]!;
        return joint >= 0 && !hasGap(plant, joint);
      });
      if (joined.length === 0 || plant.parts[flow.line]!.mounted === 'none') continue;
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
            edits: (mend) => edits(mend.insertBefore(here.step, `disconnect ${part.name} at both ends`)),
          },
        ],
      });
    }
  },
});
